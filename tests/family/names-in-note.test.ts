import { describe, expect, it } from 'vitest'
import { foldName } from '#family/fold-name'
import { namesInNote } from '#family/names-in-note'

const otherNames = [
  'Bo Quillstone',
  'Inês Larkspindle',
  'Søren Wrenfold',
  'Anne-Marie Fenlock',
  'Noor Applemoor',
]
const named = (note: string, ownName = 'Ada Fernhollow') => namesInNote(note, { ownName, otherNames })

describe('other children in a note', () => {
  it('are found by first name, whole words only', () => {
    expect(named('Ada and Bo play well together.')).toEqual(['Bo'])
    expect(named('Bo’s pass was good, BO!')).toEqual(['Bo'])
    expect(named('A bold run to the box, about right.')).toEqual([])
    expect(named('Well done, Ada.')).toEqual([])
    expect(named('')).toEqual([])
  })

  it('are found whatever the accents, capitals and hyphens', () => {
    expect(named('ines helped')).toEqual(['Inês'])
    expect(named('INÊS helped')).toEqual(['Inês'])
    // The same letters written as a letter and a mark after it.
    expect(named('Ine\u0302s helped')).toEqual(['Inês'])
    expect(named('Soren helped')).toEqual(['Søren'])
    expect(named('with anne marie')).toEqual(['Anne-Marie'])
  })

  it('are told once each, in the order of the squad', () => {
    expect(named('Noor, Bo, Noor and Bo')).toEqual(['Bo', 'Noor'])
  })

  it('with the child’s own first name are named only by the whole name', () => {
    expect(named('Bo did well.', 'Bo Larchgate')).toEqual([])
    expect(named('Bo Quillstone did well.', 'Bo Larchgate')).toEqual(['Bo Quillstone'])
  })

  it('are found in writings without spaces', () => {
    const note = { ownName: 'Ada', otherNames: ['小燕', 'สมหญิง'] }
    expect(namesInNote('她和小燕一起踢球', note)).toEqual(['小燕'])
    expect(namesInNote('她踢球', note)).toEqual([])
  })

  it('are folded as Unicode folds them, and letters with a stroke as they are written in haste', () => {
    expect(foldName('  Éloïse-Łucja  O’Thorn ')).toBe('eloise lucja o thorn')
    expect(foldName('GROẞ')).toBe('gross')
  })
})
