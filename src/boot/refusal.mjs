/** A reason not to go on that a person can act on: shown as it is, without a stack trace. */
export class Refusal extends Error {
  /**
   * @param {string} sentence what is wrong, where, and what would be right.
   * @param {{ exitCode?: number }} [how]
   */
  constructor(sentence, { exitCode = 1 } = {}) {
    super(sentence)
    this.name = 'Refusal'
    this.exitCode = exitCode
  }
}
