import type { ProjectSummary, Result } from '../../src/contract/methods.ts';
import type { Project } from '../../src/project/schema.ts';
import { fileNameOf, saveFile } from '../actions/saveFile.ts';
import { lastProject } from './lastProject.ts';
import { studio } from './studio.svelte.ts';
import { toast } from './toast.svelte.ts';

/** The example that a first start opens. */
export const FIRST_EXAMPLE = 'boat-store';
const FILE_LIMIT = 20_000_000;

/** The projects kept on this machine, and the ways in and out of it. */
export class Library {
  projects = $state.raw<readonly ProjectSummary[]>([]);
  examples = $state.raw<Result<'examples.list'>>([]);
  readonly kept = $derived(this.projects.filter((project) => !project.deleted));
  readonly deleted = $derived(this.projects.filter((project) => project.deleted));

  /** @returns whether the store answered */
  async refresh(): Promise<boolean> {
    if (this.examples.length === 0)
      this.examples = (await studio.asking(studio.client.call('examples.list', {}))) ?? [];
    const projects = await studio.asking(studio.client.call('projects.list', {}));
    if (projects) this.projects = projects;
    return projects !== null;
  }

  /** Opens what was open last; on a first start the example. @returns whether it is a first start */
  async begin(): Promise<boolean> {
    if (!(await this.refresh())) return false;
    if (this.projects.length === 0) return this.openExample(FIRST_EXAMPLE);
    const last = this.kept.find((project) => project.id === lastProject()) ?? this.kept[0];
    if (last) await this.open(last.id);
    return false;
  }

  async open(id: string): Promise<boolean> {
    return studio.takeFrom(studio.client.call('projects.open', { id }));
  }
  async openExample(key: string): Promise<boolean> {
    return studio.takeFrom(studio.client.call('examples.open', { key }));
  }
  async create(document: Project): Promise<boolean> {
    return studio.takeFrom(studio.client.call('projects.create', { document }));
  }
  async duplicate(id: string, name: string): Promise<boolean> {
    return studio.takeFrom(studio.client.call('projects.duplicate', { id, name }));
  }

  async rename(id: string, name: string): Promise<void> {
    if (id === studio.saving.head?.id) {
      studio.run('renameProject', { name });
      await studio.saving.flush();
    } else {
      const opened = await studio.asking(studio.client.call('projects.open', { id }));
      if (!opened) return;
      const document = { ...(opened.document as Project), name };
      const { revision } = opened;
      await studio.asking(studio.client.call('projects.save', { id, revision, label: 'Rename the project', document }));
    }
    await this.refresh();
  }

  /** Deletes; the message at the foot brings it back, and so does the list of deleted projects. */
  async delete(id: string): Promise<void> {
    if (id === studio.saving.head?.id) await studio.saving.flush();
    const gone = await studio.asking(studio.client.call('projects.delete', { id }));
    if (!gone) return;
    await this.refresh();
    if (id === studio.saving.head?.id) {
      const next = this.kept[0];
      if (next) await this.open(next.id);
      else studio.close();
    }
    toast.say({
      sentence: `“${gone.name}” is deleted.`,
      action: { label: 'Undo', run: () => void this.restore(id).then(() => this.open(id)) },
    });
  }

  async restore(id: string): Promise<void> {
    const back = await studio.asking(studio.client.call('projects.restore', { id }));
    if (!back) return;
    toast.say({ sentence: `“${back.name}” is back among the projects.` });
    await this.refresh();
  }

  async importFile(file: File): Promise<boolean> {
    if (file.size > FILE_LIMIT) {
      const size = Math.round(file.size / 1e6);
      studio.refusal = {
        code: 'too-large',
        sentence: `${file.name} is ${size} MB; a project file has at most ${FILE_LIMIT / 1e6} MB. Choose a file that Lullwright exported.`,
      };
      return false;
    }
    const text = await file.text();
    return studio.takeFrom(studio.client.call('projects.import', { text }));
  }

  async exportFile(id: string): Promise<void> {
    if (id === studio.saving.head?.id) await studio.saving.flush();
    const file = await studio.asking(studio.client.call('projects.export', { id }));
    if (file)
      saveFile(file.fileName || fileNameOf('project', 'json'), new Blob([file.text], { type: 'application/json' }));
  }
}

export const library = new Library();
