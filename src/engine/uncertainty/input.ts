/** What kind of thing an uncertain input is: decides what can be done about it. */
export type InputKind =
  | 'density'
  | 'stiffness'
  | 'loss'
  | 'thickness'
  | 'resistivity'
  | 'shear'
  | 'depth'
  | 'fixings'
  | 'damp'
  | 'joints'
  | 'bypass'
  | 'opening'
  | 'measured'
  | 'method';

/** One independent source of doubt: a standard normal number z moves it. */
export interface UncertainInput {
  /** the same key is the same thing: one board used in two walls errs in both alike */
  readonly key: string;
  readonly kind: InputKind;
  /** of what: the material, the make-up, the opening, the class of construction; empty for the build as a whole */
  readonly of: string;
}

export const inputKey = (kind: InputKind, of: string): string => `${kind}: ${of}`;

export const uncertainInput = (kind: InputKind, of: string): UncertainInput => ({ key: inputKey(kind, of), kind, of });
