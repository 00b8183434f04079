import { spawn, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { projectRoot } from './fingerprint.ts';

export interface RunningHost {
  readonly address: string;
  readonly process: ChildProcess;
}

/** Starts the loopback host as a child that ends with us, and waits for the address it prints first. */
export const startHost = (environment: NodeJS.ProcessEnv = process.env): Promise<RunningHost> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(projectRoot, 'dist', 'host', 'host.js'), '--until-stdin-ends'], {
      stdio: ['pipe', 'pipe', 'inherit'],
      env: environment,
    });
    child.once('exit', (code) => {
      reject(new Error(`Lullwright’s host ended before it was ready (status ${String(code)}).`));
    });
    createInterface({ input: child.stdout }).once('line', (address) => {
      resolve({ address, process: child });
    });
  });
