const isId = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i
/** What follows one of these opens something. */
const beforeCode = new Set([
  'join',
  'welcome',
  'set-up',
  'verify',
  'magic-link',
  'reset-password',
  'calendar',
])
const plainWord = /^[a-z.-]{1,30}$/

/**
 * An address as it may stand in a log: which page it was, and nothing of whom, or what opens it. Only words that could
 * be a page's own are left.
 *
 * @param {string} url
 */
export function maskedPath(url) {
  const [path = '/'] = url.split(/[?#]/)
  let before = ''
  return path
    .split('/')
    .map((part) => {
      const shown = beforeCode.has(before)
        ? '[code]'
        : isId.test(part)
          ? '[id]'
          : plainWord.test(part)
            ? part
            : '[…]'
      before = part
      return part === '' ? '' : shown
    })
    .join('/')
    .slice(0, 200)
}
