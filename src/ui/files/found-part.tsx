'use client'

import { AnswerList } from '#ui/files/answer-list'
import { ColumnsPart } from '#ui/files/columns-part'
import type { FileCheck } from '#ui/files/file-check'
import { LayoutPart } from '#ui/files/layout-part'
import { MarksPart } from '#ui/files/marks-part'
import { SettingsPart } from '#ui/files/settings-part'
import type { useImport } from '#ui/files/use-import'
import { Button } from '#ui/page/button'
import { ErrorNote } from '#ui/page/problems'

type FoundPartProps = { readonly page: ReturnType<typeof useImport>; readonly found: FileCheck }

/** What was understood, what can be changed about it, and the button that writes it. */
export function FoundPart({ page, found }: FoundPartProps) {
  const { what, said, say, busy, importIt } = page
  const { layout, marks, rows, sessions, summary, problems, isReady } = found
  const answer = (line: string, value: string) => say({ answers: changed(said.answers, line, value) })
  const leave = (key: string, value: string) => {
    const others = said.leftOutSessions.filter((one) => one !== key)
    say({ leftOutSessions: value === '' ? others : [...others, key] })
  }
  return (
    <div className="space-y-6">
      {problems.length > 0 ? (
        <ErrorNote title="The file is not understood yet.">
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        </ErrorNote>
      ) : null}
      {layout ? <LayoutPart layout={layout} onChange={say} /> : null}
      {layout ? <ColumnsPart layout={layout} rows={rows} onChange={(columns) => say({ columns })} /> : null}
      <MarksPart
        marks={marks}
        onChange={(key, meaning) => say({ marks: { ...said.marks, [key]: meaning } })}
      />
      <SettingsPart what={what} said={said} defaults={found.defaults} onChange={say} />
      <AnswerList
        title="The days"
        items={sessions.map(({ key, name, saying }) => ({ key, name, cells: [], saying }))}
        answerOf={(key) => (said.leftOutSessions.includes(key) ? 'leaveOut' : '')}
        onAnswer={leave}
      />
      <AnswerList
        title="The rows"
        items={rows.map(({ line, cells, saying }) => ({
          key: String(line),
          name: `Line ${line}`,
          cells,
          saying,
        }))}
        answerOf={(key) => said.answers[key] ?? ''}
        onAnswer={answer}
      />
      <section
        aria-label="What will happen"
        className="sticky bottom-0 z-10 space-y-2 border-t-2 border-rule-strong bg-leaf py-3"
      >
        <p>
          <strong className="font-semibold">What will happen:</strong> {summary.join(' ') || 'nothing.'}
        </p>
        {isReady ? null : <p className="text-sm text-soft">{notReady}</p>}
        <Button type="button" disabled={!isReady || busy !== null} onClick={() => void importIt()}>
          Import all of it
        </Button>
      </section>
    </div>
  )
}

const notReady = 'It cannot be imported yet: answer what is asked above, or there is nothing new in the file.'

function changed(answers: Readonly<Record<string, string>>, line: string, value: string) {
  const { [line]: _, ...others } = answers
  return value === '' ? others : { ...others, [line]: value }
}
