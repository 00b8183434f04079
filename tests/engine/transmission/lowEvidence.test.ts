import { describe, expect, it } from 'vitest';
import { structureOf } from '../../../src/engine/assembly/index.ts';
import {
  CONSTRUCTION_CLASSES,
  constructionClass,
  lowEvidence,
  predictAssembly,
} from '../../../src/engine/transmission/index.ts';
import { assemblyOf, measuredCases } from '../../reference/tl/measuredCases.ts';
import { GYPSUM, cavity, layup, sheet } from '../../support/layups.ts';

const measuredAt63 = new Map<string, number>();
for (const it of measuredCases()) {
  if (!it.measured.bands_Hz?.includes(63)) continue;
  const kind = constructionClass(structureOf(assemblyOf(it)));
  measuredAt63.set(kind, (measuredAt63.get(kind) ?? 0) + 1);
}

describe('what stands behind 50, 63 and 80 Hz', () => {
  it.each(CONSTRUCTION_CLASSES)('is as many figures as the sources print: %s', (kind) => {
    const count = measuredAt63.get(kind) ?? 0;
    const said = lowEvidence(kind);
    expect(said).toContain(kind);
    if (count === 0) expect(said).toContain('theory alone');
    else expect(said).toContain(count === 1 ? 'one figure was' : `${count} figures were`);
  });

  it('is said of each of the three bands of a prediction, and of none from 100 Hz on', () => {
    const {
      bands,
      extrapolated,
      constructionClass: kind,
    } = predictAssembly(layup(sheet(GYPSUM, 12.5), cavity(100, 100), sheet(GYPSUM, 12.5)), { resolution: 'draft' });
    const at = (band: number): string | null => extrapolated[bands.indexOf(band)] ?? null;
    for (const band of [50, 63, 80]) expect(at(band)).toContain(lowEvidence(kind));
    expect(at(100)).toBeNull();
  });
});
