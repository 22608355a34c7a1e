/** Runs the stages of reading, so that an error in one of them leaves the others their work. */

/** The stages of one page. */
export class Stages {
  /** Those that ended in an error. */
  readonly failed: string[] = [];

  /** What the work gives, or `instead` when it ends in an error, which is kept in mind. */
  run<T>(stage: string, work: () => T, instead: T): T {
    try {
      return work();
    } catch {
      this.failed.push(stage);
      return instead;
    }
  }
}
