import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { type ListedLink, linkMadeText, linkStateText, linkText } from '#ui/people/link-words'

type LinkListProps = {
  readonly links: readonly ListedLink[]
  /** Whose links they are, as hidden fields. */
  readonly fields: Readonly<Record<string, string>>
  readonly revoke: SendForm
}

/** Links that were made, how each stands, and the way to take an open one back. */
export function LinkList({ links, fields, revoke }: LinkListProps) {
  return (
    <ul className="max-w-prose">
      {links.map((link) => (
        <li key={link.id} className="border-b border-rule py-2">
          <p>
            <span className="font-medium">{linkText(link)}</span>: {linkStateText(link)}.
          </p>
          <p className="text-sm text-soft">{linkMadeText(link)}.</p>
          {link.state === 'open' ? (
            <ReplyForm
              send={revoke}
              refusedTitle="Not taken back"
              waiting="Taking it back …"
              className="mt-1"
            >
              {Object.entries(fields).map(([name, value]) => (
                <input key={name} type="hidden" name={name} value={value} />
              ))}
              <input type="hidden" name="linkId" value={link.id} />
              <Button weight="plain">Take this link back</Button>
            </ReplyForm>
          ) : null}
        </li>
      ))}
    </ul>
  )
}
