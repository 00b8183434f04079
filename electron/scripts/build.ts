import { buildApp } from './buildApp.ts';

const began = performance.now();
await buildApp('info');
console.log(`Built into dist/ in ${((performance.now() - began) / 1000).toFixed(1)} s.`);
