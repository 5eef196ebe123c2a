/** Neither a line-up was found in the time there was, nor that there is none. */
export class NotDecided extends Error {
  constructor() {
    super('No line-up was found in time, and it is not ruled out that there is one.')
    this.name = 'NotDecided'
  }
}
