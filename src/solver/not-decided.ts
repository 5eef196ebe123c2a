/** Neither a plan, of a match or of weeks, was found in the time there was, nor that there is none. */
export class NotDecided extends Error {
  constructor() {
    super('No plan was found in time, and it is not ruled out that there is one.')
    this.name = 'NotDecided'
  }
}
