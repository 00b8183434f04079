import * as v from 'valibot';
import { fault, pathText, valueText, type Fault } from './fault.ts';
import { formFaults } from './formFaults.ts';
import { findNotJson } from './jsonValue.ts';
import { migrate } from './migrations/migrate.ts';
import { assemblyRules } from './rules/assemblyRules.ts';
import { choiceRules } from './rules/choiceRules.ts';
import { flankingRules } from './rules/flankingRules.ts';
import { materialRules } from './rules/materialRules.ts';
import { surfaceRules } from './rules/surfaceRules.ts';
import { ventRules } from './rules/ventRules.ts';
import { FORMAT, FORMAT_VERSION, projectSchema, type Project } from './schema.ts';

/** Why a document was refused as a whole; the codes are the contract's. */
export type RefusalCode = 'bad-document' | 'newer-document' | 'not-a-project' | 'too-large';

export type Checked =
  | { readonly ok: true; readonly project: Project }
  | { readonly ok: false; readonly code: RefusalCode; readonly faults: readonly Fault[] };

/** More faults than anyone corrects at a time are not listed. */
const MOST_FAULTS = 50;

const refused = (code: RefusalCode, ...faults: readonly Fault[]): Checked => ({
  ok: false,
  code,
  faults: faults.slice(0, MOST_FAULTS),
});

/** A refusal of the whole file rather than of a value in it. */
export const refusedWhole = (code: RefusalCode, sentence: string, value = ''): Checked =>
  refused(code, { path: '', value, allowed: 'a Lullwright project', sentence });

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Lists where the format wants objects with ids; the schema library would take an empty one for an empty object. */
const listFaults = (document: Readonly<Record<string, unknown>>): readonly Fault[] =>
  ['materials', 'assemblies'].flatMap((key) =>
    Array.isArray(document[key]) ? [fault([key], document[key], 'an object with an id for each entry')] : [],
  );

/** Breaches of the rules across fields, as many as are listed; finding one more costs time. */
function* firstFaults(project: Project): Generator<Fault> {
  let room = MOST_FAULTS;
  for (const rule of [materialRules, assemblyRules, surfaceRules, flankingRules, choiceRules, ventRules])
    for (const found of rule(project)) {
      if (room <= 0) return;
      room -= 1;
      yield found;
    }
}

const checkForm = (document: Readonly<Record<string, unknown>>): Checked => {
  const lists = listFaults(document);
  if (lists.length > 0) return refused('bad-document', ...lists);
  const parsed = v.safeParse(projectSchema, document);
  if (!parsed.success) return refused('bad-document', ...formFaults(document, parsed.issues, MOST_FAULTS));
  const project = parsed.output;
  const faults = [...firstFaults(project)];
  return faults.length > 0 ? refused('bad-document', ...faults) : { ok: true, project };
};

/**
 * Reads a document of any age as a project of the present format: plain JSON, format version, migration, form, rules.
 * Never throws: what is wrong comes back as sentences that name the path, the value, what is allowed and a way out.
 */
export const checkProject = (document: unknown): Checked => {
  if (!isRecord(document))
    return refusedWhole(
      'not-a-project',
      `This is not a Lullwright project: it holds ${valueText(document)} instead of a document.`,
    );
  const stray = findNotJson(document);
  if (stray)
    return refused('bad-document', {
      path: pathText(stray.path),
      value: stray.what,
      allowed: 'plain JSON values',
      sentence: `${pathText(stray.path) || 'The document'} cannot be read: ${stray.what}. Allowed are plain JSON values.`,
    });
  const { format } = document;
  const version = typeof format === 'string' ? /^lullwright\/project@([1-9][0-9]{0,5})$/.exec(format)?.[1] : undefined;
  if (version === undefined)
    return refused(
      'not-a-project',
      fault(
        ['format'],
        format,
        JSON.stringify(FORMAT),
        'A Lullwright project says so at its top; this is another kind of file, or a damaged one.',
      ),
    );
  if (Number(version) > FORMAT_VERSION)
    return refused(
      'newer-document',
      fault(
        ['format'],
        format,
        `up to version ${FORMAT_VERSION}`,
        'This project was saved by a newer Lullwright. Install that version to open it; nothing in it has been changed.',
      ),
    );
  const current = migrate(document, Number(version), FORMAT_VERSION);
  return current
    ? checkForm(current)
    : refusedWhole('not-a-project', `No way is known from version ${version} of the format to this one.`);
};
