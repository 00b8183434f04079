import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { projectRoot } from '../fingerprint.ts';

export interface ToolRun {
  readonly code: number;
  readonly output: string;
}

/** Runs a script with this Node, in the project's folder, and keeps what it prints. `entry` is relative to there. */
export const runTool = (
  entry: string,
  args: readonly string[] = [],
  extra: Readonly<Record<string, string>> = {},
): Promise<ToolRun> =>
  new Promise((resolve) => {
    const { FORCE_COLOR: _, ...inherited } = process.env;
    const child = spawn(process.execPath, [join(projectRoot, entry), ...args], {
      cwd: projectRoot,
      env: { ...inherited, NO_COLOR: '1', CI: '1', ...extra },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const pieces: Buffer[] = [];
    child.stdout.on('data', (piece: Buffer) => pieces.push(piece));
    child.stderr.on('data', (piece: Buffer) => pieces.push(piece));
    child.once('close', (code) => {
      resolve({ code: code ?? 1, output: Buffer.concat(pieces).toString('utf8') });
    });
  });
