const steps = [
  { name: 'day', seconds: 24 * 60 * 60 },
  { name: 'hour', seconds: 60 * 60 },
  { name: 'minute', seconds: 60 },
] as const

/** How long ago something was, in its largest whole step; right in every time zone. */
export function sayAgo({ moment, now }: { readonly moment: Date; readonly now: Date }): string {
  const passed = (now.getTime() - moment.getTime()) / 1000
  for (const { name, seconds } of steps) {
    const count = Math.floor(passed / seconds)
    if (count > 0) return `${count} ${name}${count === 1 ? '' : 's'} ago`
  }
  return 'just now'
}
