import { describe, expect, it } from 'vitest';
import { jsonSchema } from '../../src/project/jsonSchema.ts';
import published from '../../assets/schema/project-1.schema.json' with { type: 'json' };

describe('the published schema', () => {
  it('is the one that the code checks by; write it anew with: node src/host/cli/schema.ts', () => {
    expect(published).toEqual(JSON.parse(JSON.stringify(jsonSchema())));
  });

  it('is of draft 2020-12, refuses unknown keys and states defaults and units', () => {
    expect(published.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(published.additionalProperties).toBe(false);
    const text = JSON.stringify(published);
    expect(text).toContain('between the centres of studs; 600 where it is not given');
    expect(text).toContain('"thickness_mm":{"type":"number","minimum":0.05,"maximum":3000}');
  });
});
