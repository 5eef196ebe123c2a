'use client'

import { useState } from 'react'
import type { Saying } from '#ui/files/file-check'
import { fieldLook } from '#ui/page/field'

export type AnswerItem = {
  readonly key: string
  readonly name: string
  readonly cells: readonly string[]
  readonly saying: Saying
}

type AnswerListProps = {
  readonly title: string
  readonly items: readonly AnswerItem[]
  readonly answerOf: (key: string) => string
  readonly onAnswer: (key: string, value: string) => void
}

const atFirst = 100
const more = 500

/** Rows or days with what will become of each; those that ask something come first. */
export function AnswerList({ title, items, answerOf, onAnswer }: AnswerListProps) {
  const [shown, setShown] = useState(atFirst)
  if (items.length === 0) return null
  const asking = items.filter(({ saying }) => isAsking(saying))
  const others = items.filter(({ saying }) => !isAsking(saying))
  const ordered = [...asking, ...others]
  return (
    <div>
      <h3 className="font-semibold">
        {title} <span className="font-normal text-soft">({items.length})</span>
      </h3>
      <ul className="mt-2 border-t border-rule">
        {ordered.slice(0, shown).map((item) => (
          <AnswerRow key={item.key} item={item} answer={answerOf(item.key)} onAnswer={onAnswer} />
        ))}
      </ul>
      {ordered.length > shown ? (
        <button
          type="button"
          onClick={() => setShown(shown + more)}
          className="tap mt-2 cursor-pointer text-accent underline underline-offset-4"
        >
          Show more: {ordered.length - shown} are not shown yet
        </button>
      ) : null}
    </div>
  )
}

function isAsking({ tone }: Saying): boolean {
  return tone === 'ask' || tone === 'wrong'
}

type AnswerRowProps = {
  readonly item: AnswerItem
  readonly answer: string
  readonly onAnswer: AnswerListProps['onAnswer']
}

function AnswerRow({ item: { key, name, cells, saying }, answer, onAnswer }: AnswerRowProps) {
  return (
    <li
      className={`grid gap-x-6 gap-y-1 border-b border-rule px-2 py-2.5 sm:grid-cols-[minmax(0,2fr)_minmax(0,3fr)_16rem] ${isAsking(saying) ? 'bg-warn-pale' : ''}`}
    >
      <p className="figures text-sm break-words text-soft">
        <span className="font-medium text-ink">{name}</span>{' '}
        <bdi>{cells.filter((cell) => cell !== '').join(' · ')}</bdi>
      </p>
      <p className="break-words">
        <Mark tone={saying.tone} /> <bdi>{saying.says}</bdi>
      </p>
      <Answer name={name} saying={saying} answer={answer} onAnswer={(value) => onAnswer(key, value)} />
    </li>
  )
}

type AnswerProps = {
  readonly name: string
  readonly saying: Saying
  readonly answer: string
  readonly onAnswer: (value: string) => void
}

/** A box to tick where the only other answer is to leave it out, a list otherwise. */
function Answer({ name, saying, answer, onAnswer }: AnswerProps) {
  const [first, second] = saying.choices
  if (!first) return null
  if (!second && first.value === 'leaveOut') {
    return (
      <label className="tap flex items-center gap-2 text-sm">
        <input
          type="checkbox"
          checked={answer === first.value}
          onChange={(event) => onAnswer(event.target.checked ? first.value : '')}
          className="size-5 shrink-0 accent-accent"
        />
        <span>
          {first.label}
          <span className="sr-only">: {name}</span>
        </span>
      </label>
    )
  }
  return (
    <select
      aria-label={`${name}: what to do`}
      value={answer}
      onChange={(event) => onAnswer(event.target.value)}
      className={fieldLook}
    >
      <option value="">{isAsking(saying) && answer === '' ? 'Choose an answer' : 'As understood'}</option>
      {saying.choices.map(({ value, label }) => (
        <option key={value} value={value}>
          {label}
        </option>
      ))}
    </select>
  )
}

const marks: Readonly<Record<Saying['tone'], { readonly sign: string; readonly word: string }>> = {
  new: { sign: '+', word: 'New' },
  change: { sign: '~', word: 'Changed' },
  same: { sign: '=', word: 'Known' },
  ask: { sign: '?', word: 'Question' },
  wrong: { sign: '!', word: 'Problem' },
  passed: { sign: '–', word: 'Not taken' },
}

/** Told apart by sign and word, never by colour alone. */
function Mark({ tone }: { readonly tone: Saying['tone'] }) {
  const { sign, word } = marks[tone]
  return (
    <span className="mr-1 inline-block border border-rule-strong bg-leaf px-1.5 text-xs font-semibold">
      <span aria-hidden="true">{sign} </span>
      {word}
    </span>
  )
}
