/** Says in one sentence what this machine lacks for the editor tests, and what to do. No trace: it is no fault of the code. */
export class Lacking extends Error {
  constructor(sentence: string, options?: ErrorOptions) {
    super(sentence, options);
    this.stack = sentence;
  }
}
