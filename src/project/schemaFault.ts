import type * as v from 'valibot';
import { fault, missingKey, unknownKey, type Fault, type Path } from './fault.ts';
import { suggestion } from './nearest.ts';

/** Units as keys end in them, longest first. */
const UNITS: readonly (readonly [suffix: string, unit: string])[] = [
  ['_L_s_person', 'L/s a person'],
  ['_Pa_s_m2', 'Pa·s/m²'],
  ['_kg_m2', 'kg/m²'],
  ['_percent', '%'],
  ['_kg_m3', 'kg/m³'],
  ['_per_m2', 'per m²'],
  ['_per_m3', 'per m³'],
  ['_GPa', 'GPa'],
  ['_MPa', 'MPa'],
  ['_ppm', 'ppm'],
  ['_L_s', 'L/s'],
  ['_deg', '°'],
  ['_mm', 'mm'],
  ['_Pa', 'Pa'],
  ['_m3', 'm³'],
  ['_dB', 'dB'],
  ['_Hz', 'Hz'],
  ['_m', 'm'],
  ['_W', 'W'],
  ['_K', 'K'],
  ['_C', '°C'],
  ['_s', 's'],
];

const unitOf = (path: Path): string => {
  const key = path.findLast((step) => typeof step === 'string') ?? '';
  const unit = UNITS.find(([suffix]) => key.endsWith(suffix))?.[1];
  return unit === undefined ? '' : ` ${unit}`;
};

/** Where an issue of the schema library lies. */
export const issuePath = (issue: v.BaseIssue<unknown>): Path =>
  (issue.path ?? []).map((step) => (typeof step.key === 'number' ? step.key : String(step.key)));

/** ("board" | "cavity") becomes board or cavity */
const oneOf = (expected: string | null): string =>
  (expected ?? '')
    .replace(/[()"]/g, '')
    .split(' | ')
    .join(', ')
    .replace(/, ([^,]*)$/, ' or $1');

const lengthText = (issue: v.BaseIssue<unknown>): string => {
  const one = issue.requirement === 1;
  const things = typeof issue.input === 'string' ? (one ? 'letter' : 'letters') : one ? 'entry' : 'entries';
  return `${issue.type.startsWith('min') ? 'at least' : 'at most'} ${String(issue.requirement)} ${things}`;
};

const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  record: 'an object with an id for each entry',
  strict_object: 'an object',
};

/** Whether an issue is a key that the format does not know. */
export const isUnknownKey = (issue: v.BaseIssue<unknown>): boolean =>
  issue.type === 'strict_object' && issue.expected === 'never';

/** A fault of form, from the schema library's issue. */
export const schemaFault = (issue: v.BaseIssue<unknown>, knownKeys: readonly string[]): Fault => {
  const path = issuePath(issue);
  const key = String(path.at(-1) ?? '');
  const missing = issue.received === 'undefined';
  if (isUnknownKey(issue)) return unknownKey(path, issue.path?.at(-1)?.value, suggestion(key, knownKeys));
  if (issue.type === 'strict_object' && missing) return missingKey(path);
  if (issue.type === 'variant' && issue.expected === 'Object') return fault(path, issue.input, 'an object with a kind');
  if (issue.type === 'variant' || issue.type === 'picklist' || issue.type === 'literal')
    return fault(
      path,
      missing ? undefined : issue.input,
      oneOf(issue.expected),
      typeof issue.input === 'string' ? suggestion(issue.input, oneOf(issue.expected).split(/, | or /)) : '',
    );
  if (issue.type === 'min_value' || issue.type === 'max_value' || issue.type === 'number')
    return fault(
      path,
      issue.input,
      issue.message.startsWith('a number') ? `${issue.message}${unitOf(path)}` : 'a number',
      typeof issue.input === 'string' ? 'Write the number without quotation marks.' : '',
    );
  if (issue.type === 'regex') return fault(path, issue.input, `an id of ${issue.message}`);
  if (issue.type.endsWith('_length')) return fault(path, issue.input, lengthText(issue));
  return fault(path, issue.input, KINDS[issue.type] ?? issue.message);
};
