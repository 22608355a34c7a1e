/** Where the worker's script lies in a build, which puts its address here; null where nothing was built. */
export const SOLVER_ADDRESS: string | null = null;
