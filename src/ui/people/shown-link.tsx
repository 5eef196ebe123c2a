import type { LinkToShow } from '#ui/entry/send-form'
import { ScanCode } from '#ui/join/scan-code'

/** A link right after it was made: to be scanned from this screen, or copied. */
export function ShownLink({ link }: { readonly link: LinkToShow }) {
  return (
    <div className="mt-3 space-y-2">
      <ScanCode code={link.code} label="Code to scan with a phone" />
      <label className="block max-w-prose">
        <span className="block text-sm font-medium text-soft">Or copy the link</span>
        <textarea
          readOnly
          rows={4}
          value={link.href}
          className="block w-full border border-rule-strong bg-leaf px-3 py-2 text-sm break-all"
        />
      </label>
    </div>
  )
}
