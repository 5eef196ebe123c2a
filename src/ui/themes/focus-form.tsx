import type { ThemeFocus } from '#themes/theme-focus'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { words } from '#ui/words'

type FocusFormProps = {
  readonly squadId: string
  readonly theme: { readonly id: string; readonly name: string; readonly focus: ThemeFocus }
  readonly designs: readonly { readonly id: string; readonly name: string; readonly themeId: string | null }[]
  /** Designs that serve it besides those about it. */
  readonly servingIds: readonly string[]
  readonly send: SendForm
}

const roles = ['attack', 'defend', 'keep'] as const
const situations = ['outnumbering', 'level', 'outnumbered'] as const

/** What a theme is about, and which designs serve it. */
export function FocusForm({ squadId, theme, designs, servingIds, send }: FocusFormProps) {
  const own = designs.filter(({ themeId }) => themeId === theme.id)
  const others = designs.filter(({ themeId }) => themeId !== theme.id)
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…">
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="themeId" value={theme.id} />
      <div className="max-w-3xl space-y-4">
        <Ticks
          legend="What it is mostly about"
          name="roles"
          options={roles.map((role) => ({ value: role, label: words.role[role] }))}
          ticked={theme.focus.roles}
        />
        <Ticks
          legend="And with how many"
          name="situations"
          options={situations.map((one) => ({ value: one, label: words.situation[one] }))}
          ticked={theme.focus.situations}
        />
        {own.length > 0 ? (
          <p className="text-sm text-soft">
            Designs about it serve it in any case: {own.map(({ name }) => name).join(', ')}.
          </p>
        ) : null}
        {others.length > 0 ? (
          <Ticks
            legend="Other designs that serve it too"
            name="designIds"
            options={others.map(({ id, name }) => ({ value: id, label: name }))}
            ticked={servingIds}
          />
        ) : null}
        <Button weight="plain">Save what it is about</Button>
      </div>
    </ReplyForm>
  )
}

function Ticks({
  legend,
  name,
  options,
  ticked,
}: {
  readonly legend: string
  readonly name: string
  readonly options: readonly { readonly value: string; readonly label: string }[]
  readonly ticked: readonly string[]
}) {
  return (
    <fieldset>
      <legend className="text-sm font-medium text-soft">{legend}</legend>
      <div className="flex flex-wrap gap-x-6">
        {options.map(({ value, label }) => (
          <label key={value} className="tap flex cursor-pointer items-center gap-3">
            <input
              type="checkbox"
              name={name}
              value={value}
              defaultChecked={ticked.includes(value)}
              className="size-6 shrink-0 accent-accent"
            />
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  )
}
