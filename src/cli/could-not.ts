/** What was asked could not be done, and nobody need look for a fault in the program: exit code 1 and the sentence alone. */
export class CouldNot extends Error {
  constructor(sentence: string) {
    super(sentence)
    this.name = 'CouldNot'
  }
}
