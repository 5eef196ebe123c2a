import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { themeOptions } from '#ui/themes/theme-options'

export type EditedTheme = {
  readonly id: string
  readonly name: string
  readonly parentId: string | null
  readonly asks: string
}

type ThemeFormProps = {
  readonly squadId: string
  /** Null: a new one. */
  readonly theme: EditedTheme | null
  /** What it can stand under, in the order of the programme. */
  readonly parents: readonly { readonly id: string; readonly name: string; readonly depth: number }[]
  readonly send: SendForm
}

const places = { name: 'Name', parentId: 'Stands under', asks: 'What it asks for' }

/** A theme's name, what it stands under, and what it asks for. */
export function ThemeForm({ squadId, theme, parents, send }: ThemeFormProps) {
  const key = theme?.id ?? 'new'
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…" places={places}>
      <input type="hidden" name="squadId" value={squadId} />
      {theme ? <input type="hidden" name="themeId" value={theme.id} /> : null}
      <div className="max-w-prose space-y-4">
        <Field
          name="name"
          id={`name-${key}`}
          label={places.name}
          required
          maxLength={80}
          defaultValue={theme?.name ?? ''}
        />
        <Select
          name="parentId"
          id={`parent-${key}`}
          label={places.parentId}
          defaultValue={theme?.parentId ?? ''}
          options={[{ value: '', label: 'nothing: at the top' }, ...themeOptions(parents)]}
        />
        <Field
          name="asks"
          id={`asks-${key}`}
          label={places.asks}
          hint="In a sentence for coaches; may stay empty."
          maxLength={300}
          defaultValue={theme?.asks ?? ''}
        />
        <Button weight="plain">{theme ? 'Save the theme' : 'Add the theme'}</Button>
      </div>
    </ReplyForm>
  )
}

/** One step up or down among the themes beside it. */
export function MoveThemeForm({
  squadId,
  theme,
  send,
}: {
  readonly squadId: string
  readonly theme: Pick<EditedTheme, 'id' | 'name'>
  readonly send: SendForm
}) {
  return (
    <ReplyForm send={send} refusedTitle="Not moved" waiting="Moving…">
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="themeId" value={theme.id} />
      <div className="flex flex-wrap gap-2">
        <Button weight="plain" name="step" value="up" aria-label={`${theme.name} one place up`}>
          ↑ Up
        </Button>
        <Button weight="plain" name="step" value="down" aria-label={`${theme.name} one place down`}>
          ↓ Down
        </Button>
      </div>
    </ReplyForm>
  )
}
