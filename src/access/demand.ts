import { type AccessObject, may } from '#access/may'
import type { Action } from '#access/rules'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'

/** Stops the request when the viewer may not. Throws AppError `notAllowed`. */
export function demand(viewer: Viewer, action: Action, object: AccessObject): void {
  if (!may(viewer, action, object)) {
    throw new AppError(
      'notAllowed',
      `${viewer.role} ${viewer.personId} may not ${action} ${JSON.stringify(object)}`,
    )
  }
}
