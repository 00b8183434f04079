import { writeSync } from 'node:fs';
import manifest from '../../../package.json' with { type: 'json' };
import { run } from './run.ts';

/** A reader that has seen enough, such as `head`, closes the pipe: that is no fault. */
const BROKEN_PIPE = 'EPIPE';

process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code === BROKEN_PIPE) process.exit(0);
  writeSync(2, `The result cannot be written: ${fault.message}.\n`);
  process.exit(1);
});

try {
  const { out, sentences, status } = await run(process.argv.slice(2), process.stdout.columns || 100, manifest.version);
  process.exitCode = status;
  for (const sentence of sentences) process.stderr.write(`${sentence}\n`);
  if (out) process.stdout.write(`${out}\n`);
} catch (fault) {
  process.exitCode = 1;
  process.stderr.write(
    `Lullwright failed by a fault of its own: ${fault instanceof Error ? fault.message : String(fault)}\n`,
  );
}
