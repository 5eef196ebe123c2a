'use client'

import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import type { ListedLink } from '#ui/people/link-words'
import { ShownLink } from '#ui/people/shown-link'

type MakeLinkFormProps = {
  /** What the link is for, as hidden fields. */
  readonly fields: Readonly<Record<string, string>>
  readonly label: string
  /** There is an address that it can be mailed to instead. */
  readonly canBeMailed: boolean
  /** How the links of this person stand now. */
  readonly links: readonly ListedLink[]
  readonly send: SendForm
}

/** Makes a link and shows it this once, for as long as it opens anything. */
export function MakeLinkForm({ fields, label, canBeMailed, links, send }: MakeLinkFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="No link was made" waiting="Making a link …">
      {(reply) => (
        <>
          {Object.entries(fields).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          <div className="flex flex-wrap gap-2">
            <Button weight="plain" name="how" value="show">
              {label}
            </Button>
            {canBeMailed ? (
              <Button weight="plain" name="how" value="mail">
                Mail it instead
              </Button>
            ) : null}
          </div>
          {reply.status === 'done' && reply.link && !isOver(reply.link.href, links) ? (
            <ShownLink link={reply.link} />
          ) : null}
        </>
      )}
    </ReplyForm>
  )
}

/** Taken back or used since: nobody should hand it over any more. */
function isOver(href: string, links: readonly ListedLink[]): boolean {
  return links.some(({ id, state }) => href.includes(id) && state !== 'open')
}
