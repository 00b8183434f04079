import type { Studio } from './studio.svelte.ts';

/** What other windows do to the project that is open here, and the two ways out. */
export class OtherWindows {
  /** newer revision that another window has saved; null while this window holds the newest */
  overtakenBy = $state<number | null>(null);
  readonly #studio: Studio;

  constructor(studio: Studio) {
    this.#studio = studio;
  }

  /** Asks the host whether another window has saved this project meanwhile. */
  async look(): Promise<void> {
    const { client, saving } = this.#studio;
    const head = saving.head;
    if (!head || saving.waiting > 0) return;
    try {
      const { revision } = await client.call('projects.revision', { id: head.id });
      const now = saving.head;
      if (now?.id !== head.id || saving.waiting > 0) return;
      this.overtakenBy = revision > now.revision ? revision : null;
    } catch {
      // A host that does not answer shows at the next save, with its sentence.
    }
  }

  /** Gives up what this window holds and takes the version of the other window. */
  async takeNewer(): Promise<void> {
    const { client, saving } = this.#studio;
    const id = saving.head?.id;
    if (!id) return;
    const opened = await this.#studio.asking(client.call('projects.open', { id }));
    if (opened) this.#studio.take(opened);
  }

  /** Keeps what this window holds as a project of its own. */
  async keepAsCopy(): Promise<void> {
    const { client, project } = this.#studio;
    if (!project) return;
    const document = { ...project, name: `${project.name} (this window)`.slice(0, 200) };
    const opened = await this.#studio.asking(client.call('projects.create', { document }));
    if (opened) this.#studio.take(opened);
  }
}
