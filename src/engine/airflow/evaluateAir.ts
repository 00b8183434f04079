import { airNotes } from './airNotes.ts';
import type { AirPlan, SessionStep } from './airPlan.ts';
import type { AirResult, AirScenario, PathFlow } from './airResult.ts';
import { carbonDioxideCourse, requiredFlow, timeToReach } from './carbonDioxide.ts';
import { CARBON_DIOXIDE_LEVELS, leastFreshAir } from './freshAir.ts';
import { coolingFlow, temperatureRise } from './heat.ts';
import { moistureOf, roomMoisture } from './moisture.ts';
import { outerPressures, stackPressure } from './naturalDraught.ts';
import { openDoorExchange } from './openDoor.ts';
import { leakageOf, operatingPoint } from './operatingPoint.ts';
import { pathFanPressure, pieceLosses } from './pathLoss.ts';
import type { AirPath } from './pathLoss.ts';
import { carbonDioxideOf, headCount, heatOf } from './people.ts';

/** Less than this is no flow, m³/s. */
const STILL = 1e-6;

const pathAt = (path: AirPath, flow: number): PathFlow => {
  const pieces = pieceLosses(path, Math.abs(flow));
  return {
    id: path.id,
    flow,
    pieces,
    loss: pieces.reduce((sum, { loss }) => sum + loss, 0),
    fanPressure: pathFanPressure(path, Math.max(0, flow)),
  };
};

/** Outdoor air during a step: by the vents and leaks, and through the open door. */
const flowOf = (plan: AirPlan, paths: readonly AirPath[], { fan, door }: SessionStep): number => {
  const opened = door === 'open' ? plan.door : null;
  const area = opened ? opened.width * opened.height : 0;
  const { outdoorAir } = operatingPoint(
    paths,
    leakageOf(plan.changesAt50, plan.volume, area),
    fan,
    outerPressures(plan),
  );
  if (opened === null) return outdoorAir;
  const { indoorTemperature, outdoorTemperature } = plan;
  return outdoorAir + openDoorExchange(opened.width, opened.height, indoorTemperature, outdoorTemperature);
};

const scenario = (
  key: AirScenario['key'],
  name: string,
  plan: AirPlan,
  paths: readonly AirPath[],
  change: Partial<SessionStep>,
): AirScenario => {
  const generation = carbonDioxideOf(plan.people);
  const flows = new Map<string, number>();
  const course = carbonDioxideCourse(
    plan.session.map((step) => {
      const changed = { ...step, ...change };
      const state = `${changed.fan} ${changed.door}`;
      const flow = flows.get(state) ?? flowOf(plan, paths, changed);
      flows.set(state, flow);
      return { name: step.name, duration: step.duration, generation: generation * step.presence, flow };
    }),
    plan.volume,
    plan.outdoor,
  );
  const { aim, poor, workLimit } = CARBON_DIOXIDE_LEVELS;
  return {
    key,
    name,
    course,
    timeTo1000: timeToReach(course, aim),
    timeTo1500: timeToReach(course, poor),
    timeTo5000: timeToReach(course, workLimit),
  };
};

/**
 * The air of a room with its vents: flows where fans and losses balance, CO2 over a session with and without fan and
 * with the door open, heat and moisture once steady, and what to beware of.
 * @param plan the room and its people
 * @param paths its vents
 * @returns all of it in SI
 * @throws RangeError for a volume ≤ 0 or a fan curve that is none
 * @validity air mixed throughout; steady wind; no heat through walls; a standing fan as an open piece of duct
 * @source as carbonDioxide, operatingPoint, heat and moisture
 */
export const evaluateAir = (plan: AirPlan, paths: readonly AirPath[]): AirResult => {
  const people = headCount(plan.people);
  const leakage = leakageOf(plan.changesAt50, plan.volume);
  const outer = outerPressures(plan);
  const stack = stackPressure(plan.heightBetween, plan.indoorTemperature, plan.outdoorTemperature);
  const point = operatingPoint(paths, leakage, true, outer);
  const { sensible, latent } = heatOf(plan.people, plan.indoorTemperature);
  const flowing = point.outdoorAir > STILL;
  const total = sensible + plan.equipment;
  const outdoor = { temperature: plan.outdoorTemperature, relativeHumidity: plan.outdoorHumidity };
  const result: Omit<AirResult, 'notes'> = {
    people,
    point,
    paths: paths.map((path) => pathAt(path, point.flows[path.id] ?? 0)),
    still: operatingPoint(paths, leakage, false, outer),
    draught: { stack, wind: outer.supply - outer.extract - stack },
    planned: people * plan.perPerson,
    least: leastFreshAir(people, plan.floor),
    forTarget: requiredFlow(carbonDioxideOf(plan.people), plan.target, plan.outdoor),
    scenarios: [
      scenario('planned', 'As planned', plan, paths, {}),
      scenario('fan-off', 'Fan off, door closed', plan, paths, { fan: false, door: 'closed' }),
      ...(plan.door ? [scenario('door-open', 'Fan off, door open', plan, paths, { fan: false, door: 'open' })] : []),
    ],
    heat: {
      people: sensible,
      equipment: plan.equipment,
      latent,
      rise: flowing ? temperatureRise(total, point.outdoorAir) : null,
      flow: coolingFlow(total, plan.mostRise),
    },
    moisture: flowing ? roomMoisture(moistureOf(latent), point.outdoorAir, outdoor, plan.indoorTemperature) : null,
  };
  return { ...result, notes: airNotes(plan, paths, result) };
};
