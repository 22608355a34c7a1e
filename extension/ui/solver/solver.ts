/** The worker of this page; where none can be had, recipes are worked out in the page once it is drawn. */
import { afterPaint } from '../hooks/after-paint.ts';
import { type Ask, newestQuestion } from './newest-question.ts';
import { type Answer, type AsItIs, answerTo, type Question, type Told } from './questions.ts';
import { solverThread } from './solver-thread.ts';

const here = (question: Question): Promise<Answer> =>
  new Promise((done) => void afterPaint(() => done(answerTo(question))));

/** One question of a worker. @throws {Error} when its script does not run. */
const by = (worker: Worker, question: Question, tell: (asItIs: AsItIs) => void): Promise<Answer> =>
  new Promise((done, failed) => {
    worker.onmessage = ({ data }: MessageEvent<Told>) =>
      data.kind === 'answer' ? done(data.answer) : tell(data.asItIs);
    worker.onerror = (event) => failed(new Error(event.message || 'the worker does not run'));
    worker.postMessage(question);
  });

let worker = solverThread;

async function work(question: Question, tell: (asItIs: AsItIs) => void): Promise<Answer> {
  if (!worker) return here(question);
  try {
    return await by(worker, question, tell);
  } catch (error) {
    console.error(error);
    worker = null;
    return here(question);
  }
}

/** Works out the newest question; what was asked before it and has not begun is left. */
export const ask: Ask<Question, Answer, AsItIs> = newestQuestion(work);
