/** The plan that a job follows unless another is given. It is checked once, when it is read. */
import { JobPlan } from "./JobPlan"
import earthingAndBonding from "./plans/earthingAndBonding.json"

export const usualPlan: JobPlan = JobPlan.parse(earthingAndBonding)
