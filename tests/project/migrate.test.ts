import { describe, expect, it } from 'vitest';
import { migrate, migrations, type Migration } from '../../src/project/migrations/migrate.ts';
import { FORMAT, FORMAT_VERSION } from '../../src/project/schema.ts';

describe('migration', () => {
  it('takes a document through each version in turn', () => {
    const steps = new Map<number, Migration>([
      [1, (document) => ({ ...document, second: true })],
      [2, (document) => ({ ...document, third: Object.keys(document).length })],
    ]);
    expect(migrate({ name: 'Old' }, 1, 3, steps)).toEqual({ name: 'Old', second: true, third: 2 });
    expect(migrate({ name: 'Old' }, 2, 3, steps)).toEqual({ name: 'Old', third: 1 });
  });

  it('leaves a present document alone and refuses one without a way', () => {
    const document = { name: 'New' };
    expect(migrate(document, 3, 3)).toBe(document);
    expect(migrate(document, 1, 3, new Map())).toBeNull();
  });

  it('knows a way from every version there has been', () => {
    expect([...migrations.keys()]).toEqual(Array.from({ length: FORMAT_VERSION - 1 }, (_, i) => i + 1));
    expect(FORMAT).toBe(`lullwright/project@${FORMAT_VERSION}`);
  });
});
