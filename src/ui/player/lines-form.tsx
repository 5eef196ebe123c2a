import {
  type FieldLine,
  fieldLines,
  type LineWish,
  type LineWishes,
  lineWishes,
} from '#match/format/line-wish'
import { capital } from '#ui/capital'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { type OfPlayer, PlayerKeys } from '#ui/player/about-form'
import { words } from '#ui/words'

type LinesFormProps = {
  readonly of: OfPlayer
  readonly wishes: LineWishes
  readonly send: SendForm
}

const answers: Readonly<Record<LineWish, string>> = {
  open: 'nothing said',
  likes: 'likes it',
  learning: 'is learning it',
  notYet: 'not yet',
}

const labelOf = (line: FieldLine) => capital(words.line[line])

/** What was said of each line out of goal. Not a judgement: nothing of how well anyone plays is kept. */
export function LinesForm({ of, wishes, send }: LinesFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nothing was changed"
      waiting="Saving…"
      places={{ back: labelOf('back'), middle: labelOf('middle'), forward: labelOf('forward') }}
    >
      <PlayerKeys {...of} />
      <p className="mb-3 max-w-prose text-sm text-soft">
        A planned line-up puts everyone in the lines they like or are learning as evenly as it can over the
        term, and nobody in a line that says not yet. Minutes come first.
      </p>
      <div className="flex max-w-prose flex-wrap items-end gap-4">
        {fieldLines.map((line) => (
          <Select
            // Begins anew with what was saved.
            key={`${line} ${wishes[line]}`}
            name={line}
            label={labelOf(line)}
            defaultValue={wishes[line]}
            options={lineWishes.map((wish) => ({ value: wish, label: answers[wish] }))}
          />
        ))}
        <Button weight="plain">Save lines</Button>
      </div>
    </ReplyForm>
  )
}
