import { oneCheck, type Check } from './check.ts';
import { runTool } from './runTool.ts';

const TYPESCRIPT = 'node_modules/typescript/bin/tsc';
const WINGS = [
  'src/engine',
  'src/project',
  'src/contract',
  'src/service',
  'src/worker',
  'src/host',
  'electron',
  'tests',
  '.',
];

const tool = (name: string, group: Check['group'], entry: string, args: readonly string[] = []): Check => ({
  name,
  group,
  run: async () => {
    const { code, output } = await runTool(entry, args);
    return oneCheck(code === 0, output);
  },
});

/** Everything that reads the code without running the app; the slow ones first. */
export const staticChecks: readonly Check[] = [
  tool('lint', 'lint', 'node_modules/eslint/bin/eslint.js', ['.', '--max-warnings', '0']),
  tool('types of renderer', 'types', 'node_modules/svelte-check/bin/svelte-check', [
    '--tsconfig',
    'renderer/tsconfig.json',
    '--fail-on-warnings',
    '--output',
    'human',
  ]),
  tool('accuracy gates', 'validate', 'tests/reference/validate.ts'),
  tool('build', 'build', 'electron/scripts/build.ts'),
  ...WINGS.map((wing) => tool(`types of ${wing}`, 'types', TYPESCRIPT, ['-p', wing, '--pretty', 'false'])),
  tool('format', 'lint', 'node_modules/prettier/bin/prettier.cjs', ['--check', '.']),
];
