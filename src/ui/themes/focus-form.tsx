import { situations } from '#exposure/column'
import { focusShare } from '#exposure/focus-share'
import { seatRoles } from '#practice/turn'
import type { ThemeFocus } from '#themes/theme-focus'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { words } from '#ui/words'

type FocusFormProps = {
  readonly squadId: string
  readonly theme: { readonly id: string; readonly name: string; readonly focus: ThemeFocus }
  readonly designs: readonly {
    readonly id: string
    readonly name: string
    readonly themeId: string | null
    readonly rounds: Parameters<typeof focusShare>[0]
  }[]
  /** Designs that serve it besides those about it. */
  readonly servingIds: readonly string[]
  readonly send: SendForm
}

/** What a theme is about, and which designs serve it. */
export function FocusForm({ squadId, theme, designs, servingIds, send }: FocusFormProps) {
  const told = designs.map((design) => ({ ...design, share: focusShare(design.rounds, theme.focus) }))
  const own = told.filter(({ themeId }) => themeId === theme.id)
  // Those that have most of it first: they are the ones to look at.
  const others = told
    .filter(({ themeId }) => themeId !== theme.id)
    .toSorted((one, other) => (other.share ?? 0) - (one.share ?? 0))
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…">
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="themeId" value={theme.id} />
      <div className="max-w-3xl space-y-4">
        <Ticks
          legend="What it is mostly about"
          name="roles"
          options={seatRoles.map((role) => ({ value: role, label: words.role[role] }))}
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
            Designs about it serve it in any case: {own.map(shareText).join(', ')}.
          </p>
        ) : null}
        {others.length > 0 ? (
          <Ticks
            legend="Other designs that serve it too. In per cent: how much of the play is what the theme is about."
            name="designIds"
            options={others.map((design) => ({ value: design.id, label: shareText(design) }))}
            ticked={servingIds}
          />
        ) : null}
        <Button weight="plain">Save what it is about</Button>
      </div>
    </ReplyForm>
  )
}

function shareText({ name, share }: { readonly name: string; readonly share: number | null }): string {
  return share === null ? name : `${name} (${Math.round(share * 100)} %)`
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
