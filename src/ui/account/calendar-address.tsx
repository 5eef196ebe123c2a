import type { LinkToShow } from '#ui/entry/send-form'
import { buttonLook } from '#ui/page/button-look'
import { ShownLink } from '#ui/people/shown-link'

/** An address of a calendar right after it was made, and what to do with it. */
export function CalendarAddress({ link }: { readonly link: LinkToShow }) {
  return (
    <div className="max-w-prose space-y-3 border-rule border-y py-3">
      <p className="font-medium">Put the address into your calendar now: it is shown this once</p>
      <ol className="list-decimal space-y-1 pl-6">
        <li>Copy it, or scan the code with the phone that is to have it.</li>
        <li>
          In the calendar program look for “Subscribe”, “From address” or “From URL”. Do not choose “Import”:
          what is imported never changes again.
        </li>
        <li>Paste the address. How soon changes show is up to the program: some ask once a day.</li>
      </ol>
      <a href={link.href.replace(/^https?:/, 'webcal:')} className={buttonLook('plain')}>
        Open it in this device’s calendar
      </a>
      <ShownLink link={link} />
    </div>
  )
}
