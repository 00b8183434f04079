import boatStore from '../../assets/examples/boat-store.json' with { type: 'json' };
import cellar from '../../assets/examples/cellar.json' with { type: 'json' };

/** A project that comes with the program, as a document still to be checked. */
export interface Example {
  readonly key: string;
  readonly name: string;
  readonly what: string;
  readonly document: unknown;
}

/** What an example is about: the first sentence of its note. */
const toExample = (key: string, document: { readonly name: string; readonly note: string }): Example => ({
  key,
  name: document.name,
  what: /^.*?\.(?= |$)/s.exec(document.note)?.[0] ?? document.note,
  document,
});

/** The example projects; the first is the one that a first start opens. */
export const examples: readonly Example[] = [toExample('boat-store', boatStore), toExample('cellar', cellar)];
