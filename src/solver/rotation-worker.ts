import { answerRotationCall } from '#solver/answer-rotation-call'
import { serveCalls } from '#solver/serve-calls'

serveCalls(answerRotationCall)
