export type { AgeGroup, Sex } from './generationTable.ts';
export type { Activity, PeopleGroup } from './people.ts';
export { EXERTIONS, carbonDioxideOf, carbonDioxideRate, headCount, heatOf } from './people.ts';
export type { AirStep, CarbonDioxideCourse } from './carbonDioxide.ts';
export { carbonDioxideCourse, concentrationAfter, requiredFlow, timeToReach } from './carbonDioxide.ts';
export { CARBON_DIOXIDE_LEVELS, PLANNED_PER_PERSON, leastFreshAir } from './freshAir.ts';
export { OUTDOOR_CARBON_DIOXIDE } from './air.ts';
export { frictionFactor } from './friction.ts';
export type { BendForm } from './lossCoefficients.ts';
export {
  INTO_DUCT,
  INTO_ROOM,
  TURN_BACK,
  bendLoss,
  contractionLoss,
  enlargementLoss,
  grilleLoss,
} from './lossCoefficients.ts';
export type { FanCurve } from './fanCurve.ts';
export { fanPressure, requireFanCurve } from './fanCurve.ts';
export type { AirBox, AirElement } from './airElement.ts';
export { clearHeight, endSections } from './airElement.ts';
export { elementLoss, elementSpeed, velocityPressure } from './elementLoss.ts';
export { soundResistance } from './soundResistance.ts';
export type { AirPath, PieceLoss } from './pathLoss.ts';
export { hasFan, pathFanPressure, pathLoss, pieceLosses } from './pathLoss.ts';
export type { Leakage, OperatingPoint } from './operatingPoint.ts';
export { leakageOf, operatingPoint, pathFlow } from './operatingPoint.ts';
export type { OuterPressures, Weather } from './naturalDraught.ts';
export { outerPressures, stackPressure, windPressure } from './naturalDraught.ts';
export { openDoorExchange } from './openDoor.ts';
export { coolingFlow, temperatureRise } from './heat.ts';
export type { RoomMoisture } from './moisture.ts';
export { dewPoint, moistureOf, roomMoisture, saturationPressure } from './moisture.ts';
export type { AirPlan, SessionStep } from './airPlan.ts';
export type { AirResult, AirScenario, PathFlow } from './airResult.ts';
export { evaluateAir } from './evaluateAir.ts';
