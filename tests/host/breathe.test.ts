import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { run } from '../../src/host/cli/run.ts';
import { ventedRoom } from '../project/vents/ventedRoom.ts';

const folder = mkdtempSync(join(tmpdir(), 'lullwright-breathe-'));
afterAll(() => {
  rmSync(folder, { recursive: true });
});
const file = (name: string, content: unknown): string => {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(content));
  return path;
};

interface Breathed {
  readonly vents: readonly {
    readonly id: string;
    readonly Dne_dB: readonly number[];
    readonly flow_L_s: number;
    readonly ratings: { readonly Dnew: number | null };
    readonly wall: { readonly lost_overall_dB: number } | null;
  }[];
  readonly air: { readonly fresh_air_L_s: number; readonly scenarios: readonly { readonly key: string }[] };
  readonly notes: readonly { readonly severity: string }[];
}

interface Designed {
  readonly opening: string;
  readonly found: boolean;
  readonly cost_dB: number;
  readonly cost_in_place_dB: number;
  readonly Dnew_dB: number;
  readonly vent: { readonly id: string };
  readonly assemblies: Readonly<Record<string, object>>;
}

describe('lullwright breathe', () => {
  it('prints one JSON object with vents, air and notes', async () => {
    const { out, sentences, status } = await run(['breathe', file('room.json', ventedRoom()), '--json'], 100, '0');
    expect([status, sentences]).toEqual([0, []]);
    const value = JSON.parse(out) as Breathed;
    expect(Object.keys(value)).toEqual(['vents', 'noise_in_room', 'air', 'notes']);
    expect(value.vents.map(({ id }) => id)).toEqual(['supply', 'extract']);
    expect(value.vents.every(({ Dne_dB }) => Dne_dB.length === 27 && Dne_dB.every(Number.isFinite))).toBe(true);
    expect(value.air.fresh_air_L_s).toBeCloseTo(value.vents[0]?.flow_L_s ?? 0, 1);
    expect(value.air.scenarios.map(({ key }) => key)).toEqual(['planned', 'fan-off', 'door-open']);
    expect(value.notes.some(({ severity }) => severity === 'caution')).toBe(true);
  });

  it('prints it for reading, within the width', async () => {
    const { out, status } = await run(['breathe', file('room.json', ventedRoom())], 100, '0');
    expect(status).toBe(0);
    expect(out).toContain('Fresh air that comes in, L/s');
    expect(out).toContain('Supply (supply): Dn,e,w');
    const tables = out.split('\n').filter((line) => /^\d|^[A-Z][a-z]+ {2}/.test(line));
    expect(Math.max(...tables.map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it('says what warmth and wind move while the fan stands, and which piece is loudest', async () => {
    const room = ventedRoom();
    Object.assign(room.air, { height_between_vents_m: 3, outdoor_C: 0, wind_m_s: 4, wind_on: 'supply' });
    const { out } = await run(['breathe', file('windy.json', room), '--json'], 100, '0');
    const { air, vents } = JSON.parse(out) as {
      readonly air: {
        readonly fan_off_L_s: number;
        readonly natural_draught_Pa: { readonly warmth: number; readonly wind: number };
      };
      readonly vents: readonly {
        readonly loudest_piece: string;
        readonly noise_pieces: readonly { readonly name: string; readonly NR: number }[];
      }[];
    };
    expect(air.fan_off_L_s).toBeGreaterThan(5);
    // 1.2·293·9.81·3·(1/273.15 − 1/294.15); (0.25 + 0.5)·1.2/2·16
    expect(air.natural_draught_Pa).toEqual({ warmth: 2.71, wind: 7.2 });
    for (const { loudest_piece: loudest, noise_pieces: pieces } of vents) {
      const most = pieces.reduce((louder, it) => (it.NR > louder.NR ? it : louder));
      expect(most.name).toBe(loudest);
    }
    const told = await run(['breathe', file('windy.json', room)], 100, '0');
    expect(told.out).toContain('With the fan off, L/s');
    expect(told.out).toMatch(/Its noise in the room: NR \d+, most of it from Fan/);
  });

  it('says what to add to a project without vents', async () => {
    const { vents: _vents, ...room } = ventedRoom();
    room.surfaces[0]?.openings?.splice(0, 2);
    const { out, status } = await run(['breathe', file('none.json', room)], 100, '0');
    expect(status).toBe(0);
    expect(out).toContain('No vent of this project has a path');
    expect(out).toContain('There is no way for fresh air in and no way for used air out.');
  });

  it('names each fault of a vent on standard error, and ends with status 2', async () => {
    const room = ventedRoom();
    Object.assign(room.vents[0] ?? {}, { opening: 'inn' });
    const { out, sentences, status } = await run(['breathe', file('bad.json', room), '--json'], 100, '0');
    expect([out, status]).toEqual(['', 2]);
    expect(sentences[0]).toContain('vents[0].opening is "inn"');
    expect(sentences[0]).toContain('Did you mean in?');
  });

  it('designs the smallest box for each vent opening on demand, to be pasted', { timeout: 120_000 }, async () => {
    const { out, status } = await run(['breathe', file('room.json', ventedRoom()), '--design', '--json'], 100, '0');
    expect(status).toBe(0);
    const { designs, vents } = JSON.parse(out) as Breathed & { readonly designs: readonly Designed[] };
    expect(vents).toHaveLength(2);
    expect(designs.map(({ opening }) => opening)).toEqual(['in', 'out']);
    for (const { found, cost_dB } of designs) if (found) expect(cost_dB).toBeLessThanOrEqual(1);

    const room = ventedRoom();
    const [first] = designs;
    if (!first) throw new Error('two openings');
    const pasted = {
      ...room,
      vents: room.vents.map((vent) => (vent.id === first.vent.id ? first.vent : vent)),
      assemblies: { ...room.assemblies, ...first.assemblies },
    };
    const again = await run(['breathe', file('pasted.json', pasted), '--json'], 100, '0');
    const pastedVent = (JSON.parse(again.out) as Breathed).vents.find(({ id }) => id === first.vent.id);
    expect(pastedVent?.ratings.Dnew).toBe(first.Dnew_dB);
    expect(pastedVent?.wall?.lost_overall_dB).toBeCloseTo(first.cost_in_place_dB, 1);
  });

  it(
    'tells a design for reading: sizes, what limits it, its bass, what it stands on',
    { timeout: 120_000 },
    async () => {
      const { out, status } = await run(['breathe', file('room.json', ventedRoom()), '--design', '--bass'], 100, '0');
      expect(status).toBe(0);
      expect(out).toContain('cost it at most 1.0 dB (music rich in bass, from 50 Hz; fans standing)');
      expect(out).toMatch(/in: box as "Vent box of /);
      expect(out).toMatch(
        /In the bass it is worst at \d+ Hz: with the fan off [\d.]+ dB (more|less) than an open hole/,
      );
      expect(out).toMatch(/\d+ of them solved at 20 mm up to 400 Hz, \d+ of these in all bands, \d+ on the fine grid/);
    },
  );

  it('designs only where it is asked to', async () => {
    const wrong = await run(['shell', 'x.json', '--design'], 100, '0');
    expect(wrong).toMatchObject({ status: 2, sentences: ['--design goes with breathe, not with shell.'] });
    const alone = await run(['breathe', 'x.json', '--bass'], 100, '0');
    expect(alone).toMatchObject({ status: 2, sentences: ['--bass needs --design beside it.'] });
  });

  it('explains itself', async () => {
    const { out } = await run(['breathe', '--help'], 100, '0');
    expect(out).toContain('Usage: lullwright breathe FILE [--json]');
    expect(out).toContain('CO2 over the session');
  });
});
