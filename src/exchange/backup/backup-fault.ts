/** A backup that cannot be used: one sentence that says why. */
export class BackupFault extends Error {
  constructor(sentence: string) {
    super(sentence)
    this.name = 'BackupFault'
  }
}

/** Whatever differs from what was written is one and the same to whoever holds the file. */
export const isDamaged = (what: string) =>
  new BackupFault(`is damaged (${what}); another copy of this backup, or an earlier one, would be right`)
