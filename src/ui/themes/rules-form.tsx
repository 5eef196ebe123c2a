import type { Day } from '#common/time'
import type { ProgrammeRule } from '#themes/programme-rule'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { weeksSentence } from '#ui/themes/weeks-sentence'

type RulesFormProps = {
  readonly squadId: string
  readonly termId: string
  readonly weekDays: readonly Day[]
  readonly rules: readonly ProgrammeRule[]
  /** Every theme, in the order of the programme. */
  readonly themes: readonly { readonly id: string; readonly name: string }[]
  readonly send: SendForm
}

const labels = {
  first: 'Not before week',
  last: 'Not after week',
  after: 'Only after',
  least: 'Weeks until again, least',
  most: 'Weeks until again, most',
}

/** When each theme of the programme may come. */
export function RulesForm({ squadId, termId, weekDays, rules, themes, send }: RulesFormProps) {
  const nameOf = (id: string) => themes.find((theme) => theme.id === id)?.name ?? 'A theme'
  const order = themes.map(({ id }) => id)
  const inOrder = rules.toSorted((one, other) => order.indexOf(one.themeId) - order.indexOf(other.themeId))
  const places = Object.fromEntries(
    rules.flatMap(({ themeId }) =>
      Object.entries(labels).map(([kind, label]) => [
        `${kind}-${themeId}`,
        `${nameOf(themeId)}, ${label.toLowerCase()}`,
      ]),
    ),
  )
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…" places={places}>
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="termId" value={termId} />
      <p className="mb-3 max-w-prose text-sm text-soft">
        The weeks ahead are planned by these, without exception. An empty field binds nothing. Two weeks until
        again, at least, means: not in the week after. {weeksSentence(weekDays)}
      </p>
      <div className="space-y-5">
        {inOrder.map(({ themeId, ...rule }) => {
          const number = (kind: 'first' | 'last' | 'least' | 'most', value: number | null) => (
            <Field
              name={`${kind}-${themeId}`}
              label={labels[kind]}
              inputMode="numeric"
              maxLength={2}
              defaultValue={value ?? ''}
            />
          )
          return (
            <fieldset key={themeId} className="border-t border-rule pt-2">
              <legend className="pr-3 font-semibold">{nameOf(themeId)}</legend>
              <div className="grid max-w-4xl grid-cols-2 items-end gap-x-4 gap-y-3 md:grid-cols-5">
                {number('first', rule.firstWeek)}
                {number('last', rule.lastWeek)}
                {number('least', rule.leastWeeksBetween)}
                {number('most', rule.mostWeeksBetween)}
                <div className="col-span-2 md:col-span-1">
                  <Select
                    // Begins anew with what was saved.
                    key={rule.afterThemeId}
                    name={`after-${themeId}`}
                    label={labels.after}
                    defaultValue={rule.afterThemeId ?? ''}
                    options={[
                      { value: '', label: 'nothing before it' },
                      ...themes
                        .filter(({ id }) => id !== themeId)
                        .map(({ id, name }) => ({ value: id, label: name })),
                    ]}
                  />
                </div>
              </div>
            </fieldset>
          )
        })}
      </div>
      <div className="mt-4">
        <Button>Save when they may come</Button>
      </div>
    </ReplyForm>
  )
}
