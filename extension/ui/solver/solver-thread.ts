/** The thread in which recipes are worked out, started as soon as this is imported; null where none can be had. */
import { SOLVER_ADDRESS } from './solver-address.ts';

interface ScriptPolicies {
  createPolicy(
    name: string,
    rules: { createScriptURL(address: string): string },
  ): {
    createScriptURL(address: string): string;
  };
}

/** The only script address that pages may make, in browsers that ask for leave: the worker's own. */
function trusted(address: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: ScriptPolicies };
  const own = (asked: string): string => {
    if (asked !== SOLVER_ADDRESS) throw new TypeError('not the worker of this extension');
    return asked;
  };
  return trustedTypes
    ? trustedTypes.createPolicy('solver', { createScriptURL: own }).createScriptURL(address)
    : address;
}

function started(): Worker | null {
  if (SOLVER_ADDRESS === null || typeof Worker === 'undefined') return null;
  try {
    return new Worker(trusted(SOLVER_ADDRESS), { type: 'module' });
  } catch (error) {
    console.error(error);
    return null;
  }
}

export const solverThread: Worker | null = started();
