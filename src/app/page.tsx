import { probe } from '#common/probe'
export default function Page() { return <p>{probe}</p> }
