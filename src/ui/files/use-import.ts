'use client'

import { useRef, useState } from 'react'
import { fileSizeProblem } from '#common/file-size'
import type { Problem } from '#common/problem'
import type { SendForm } from '#ui/entry/send-form'
import {
  type CheckFile,
  type FileCheck,
  type FileSaid,
  type FileWhat,
  nothingSaid,
} from '#ui/files/file-check'

type Doors = { readonly squadId: string; readonly check: CheckFile; readonly save: SendForm }
type Busy = 'looking' | 'importing' | null

/**
 * The file and what was said about it live in this page until they are imported: nothing of it is kept on the server or
 * in the browser's storage, and a refusal leaves all of it here. Each look sends the file again.
 */
export function useImport({ squadId, check, save }: Doors) {
  const [what, setWhat] = useState<FileWhat>('roster')
  const [file, setFile] = useState<File | null>(null)
  const [said, setSaid] = useState<FileSaid>(nothingSaid)
  const [found, setFound] = useState<FileCheck | null>(null)
  const [problems, setProblems] = useState<readonly Problem[]>([])
  const [busy, setBusy] = useState<Busy>(null)
  const [done, setDone] = useState<string | null>(null)
  const [imports, setImports] = useState(0)
  // Of two looks on their way, only the later one counts.
  const looks = useRef(0)

  async function look(now: { readonly what: FileWhat; readonly file: File; readonly said: FileSaid }) {
    looks.current += 1
    const own = looks.current
    setBusy('looking')
    setDone(null)
    const answer = await check(formOf(squadId, now)).catch(() => unreachable)
    if (own !== looks.current) return
    setBusy(null)
    setProblems(answer.ok ? [] : answer.reasons)
    // What was understood last stays in sight when a change cannot be taken.
    if (answer.ok) setFound(answer.value)
  }

  function begin(next: { readonly what: FileWhat; readonly file: File | null }) {
    setWhat(next.what)
    setFile(next.file)
    setSaid(nothingSaid)
    setFound(null)
    setProblems([])
    // Not sent: far larger files would be cut off on their way, without a word.
    const tooLarge = next.file && fileSizeProblem(next.file.size)
    if (tooLarge) {
      looks.current += 1
      setBusy(null)
      return setProblems([tooLarge])
    }
    if (next.file) void look({ what: next.what, file: next.file, said: nothingSaid })
  }

  function say(change: Partial<FileSaid>) {
    const next = { ...said, ...change }
    setSaid(next)
    if (file) void look({ what, file, said: next })
  }

  async function importIt() {
    if (!file) return
    setBusy('importing')
    const form = formOf(squadId, { what, file, said })
    const reply = await save({ status: 'idle' }, form).catch(() => null)
    setBusy(null)
    if (reply?.status === 'done') {
      begin({ what, file: null })
      setDone(reply.message)
      setImports(imports + 1)
      return
    }
    setProblems(reply?.status === 'refused' ? reply.problems : unreachable.reasons)
  }

  return { what, file, said, found, problems, busy, done, imports, begin, say, importIt }
}

const unreachable = {
  ok: false as const,
  reasons: [
    {
      path: '',
      message: 'The server does not answer. The file is still chosen here: try again in a moment.',
    },
  ],
}

function formOf(
  squadId: string,
  { what, file, said }: { what: FileWhat; file: File; said: FileSaid },
): FormData {
  const form = new FormData()
  form.set('file', file)
  form.set('json', JSON.stringify({ ...said, squadId, what }))
  return form
}
