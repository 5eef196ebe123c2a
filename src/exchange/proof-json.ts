import type { Proof } from '#common/proof'
import { quiet } from '#exchange/quiet'

export function proofJson({ value, bound, proven }: Proof): Proof {
  return { value: quiet(value), bound: quiet(bound), proven }
}
