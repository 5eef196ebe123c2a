import 'server-only'
import { hostname, networkInterfaces } from 'node:os'

export type Machine = { readonly addresses: readonly string[]; readonly name: string }

/** Whether an address names this very machine, by a name or an address of its own. */
export function isOwnMachine(address: string, machine: Machine = thisMachine()): boolean {
  if (!URL.canParse(address)) return false
  const asked = new URL(address).hostname
  const name = machine.name.toLowerCase()
  const own = [
    'localhost',
    '127.0.0.1',
    '::1',
    ...machine.addresses,
    ...(name ? [name, `${name}.local`] : []),
  ]
  return own.some((one) => asked === one || asked === `[${one}]`)
}

function thisMachine(): Machine {
  const addresses = Object.values(networkInterfaces()).flatMap(
    (all) => all?.map(({ address }) => address) ?? [],
  )
  return { addresses, name: hostname() }
}
