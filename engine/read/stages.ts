/** Runs the stages of reading, so that an error in one of them leaves the others their work. */
import type { Note } from '../model.ts';
import { readNote } from './draft.ts';

/** The stages of one page, with the notes that hold for all of its recipes. */
export class Stages {
  readonly notes: Note[] = [];

  /** What the work gives, or `instead` when it ends in an error, which a note then tells. */
  run<T>(stage: string, work: () => T, instead: T): T {
    try {
      return work();
    } catch {
      const text = `An error ended one part of reading (${stage}); the rest was read.`;
      this.notes.push(readNote('stage-failed', text));
      return instead;
    }
  }
}
