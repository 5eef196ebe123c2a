import type { RegisterFault } from '#squad/checks/register-fault'
import type { PresenceLine } from '#squad/presence'

/** Every line must end after it begins. */
export function checkLineLength(register: readonly PresenceLine[]): readonly RegisterFault[] {
  return register.flatMap((own, line) =>
    own.from < own.to ? [] : [{ rule: 'lineWithoutLength', line } as const],
  )
}
