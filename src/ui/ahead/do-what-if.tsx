'use client'

import type { WhatIfDeed, WhatIfSends } from '#ui/ahead/what-if-types'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'

type DoWhatIfProps = { readonly squadId: string; readonly deed: WhatIfDeed; readonly sends: WhatIfSends }

const buttons = {
  move: 'Move the practice',
  drop: 'Cancel the practice',
  away: 'Write down that the player is away',
}

/** Does in the book what was only looked at. */
export function DoWhatIf({ squadId, deed, sends }: DoWhatIfProps) {
  const send = { move: sends.move, drop: sends.cancel, away: sends.away }[deed.kind]
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…">
      {Object.entries(fieldsOf(squadId, deed)).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <Button>{buttons[deed.kind]}</Button>
    </ReplyForm>
  )
}

function fieldsOf(squadId: string, deed: WhatIfDeed): Readonly<Record<string, string>> {
  switch (deed.kind) {
    case 'move': {
      const { id: sessionId, title, startsAt, place } = deed.session
      return { squadId, sessionId, day: deed.day, title, place, startsAt: startsAt ?? '' }
    }
    case 'drop':
      return { squadId, sessionId: deed.sessionId }
    case 'away':
      return { squadId, playerId: deed.playerId, firstDay: deed.firstDay, lastDay: deed.lastDay }
  }
}
