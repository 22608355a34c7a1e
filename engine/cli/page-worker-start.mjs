/** Starts a worker in TypeScript: a thread does not take over how its process loads TypeScript. */
import { register } from 'tsx/esm/api';

register();
const { answer } = await import('./page-worker.ts');

export default answer;
