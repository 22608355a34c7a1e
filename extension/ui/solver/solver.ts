/** The worker of this page; where none can be had, recipes are worked out in the page once it is drawn. */
import { afterPaint } from '../hooks/after-paint.ts';
import { type Ask, newestQuestion } from './newest-question.ts';
import { type Answer, answerTo, type Question } from './questions.ts';
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

function startWorker(): Worker | null {
  if (SOLVER_ADDRESS === null || typeof Worker === 'undefined') return null;
  try {
    return new Worker(trusted(SOLVER_ADDRESS), { type: 'module' });
  } catch (error) {
    console.error(error);
    return null;
  }
}

const here = (question: Question): Promise<Answer> =>
  new Promise((done) => void afterPaint(() => done(answerTo(question))));

/** One question of a worker. @throws {Error} when its script does not run. */
const by = (worker: Worker, question: Question): Promise<Answer> =>
  new Promise((done, failed) => {
    worker.onmessage = ({ data }: MessageEvent<Answer>) => done(data);
    worker.onerror = (event) => failed(new Error(event.message || 'the worker does not run'));
    worker.postMessage(question);
  });

let worker = startWorker();

async function work(question: Question): Promise<Answer> {
  if (!worker) return here(question);
  try {
    return await by(worker, question);
  } catch (error) {
    console.error(error);
    worker = null;
    return here(question);
  }
}

/** Works out the newest question; what was asked before it and has not begun is left. */
export const ask: Ask<Question, Answer> = newestQuestion(work);
