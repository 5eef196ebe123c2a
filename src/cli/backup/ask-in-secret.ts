import { CouldNot } from '#cli/could-not'

const enter = new Set(['\r', '\n', '\u0004'])
const interrupt = '\u0003'
const backspace = new Set(['\u007f', '\b'])

/** Asks on the terminal and shows nothing of what is typed. @throws CouldNot on Ctrl+C. */
export function askInSecret(question: string): Promise<string> {
  const { stdin, stderr } = process
  stderr.write(question)
  stdin.setRawMode(true)
  stdin.setEncoding('utf8')
  stdin.resume()
  return new Promise((resolve, reject) => {
    let typed: string[] = []
    const end = (how: () => void) => {
      stdin.off('data', listen)
      stdin.setRawMode(false)
      stdin.pause()
      stderr.write('\n')
      how()
    }
    const listen = (text: string) => {
      for (const letter of text) {
        if (letter === interrupt) return end(() => reject(new CouldNot('Stopped; nothing was done.')))
        if (enter.has(letter)) return end(() => resolve(typed.join('')))
        typed = backspace.has(letter) ? typed.slice(0, -1) : [...typed, letter]
      }
    }
    stdin.on('data', listen)
  })
}
