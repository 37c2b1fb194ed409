/** Equipment grounding conductors of the United States, by the device ahead. Above 2000 A editions differ: left out. */
import { defineTable } from "../Table"

export const necEquipmentConductor = defineTable({
  title: "Equipment grounding conductor by the rating of the overcurrent device",
  source: { standard: "NEC", edition: "by public pages", clause: "Table 250.122" },
  unit: "AWG or kcmil",
  status: "direct",
  rows: [
    { deviceA: 15, copper: "14", aluminium: "12" },
    { deviceA: 20, copper: "12", aluminium: "10" },
    { deviceA: 60, copper: "10", aluminium: "8" },
    { deviceA: 100, copper: "8", aluminium: "6" },
    { deviceA: 200, copper: "6", aluminium: "4" },
    { deviceA: 300, copper: "4", aluminium: "2" },
    { deviceA: 400, copper: "3", aluminium: "1" },
    { deviceA: 500, copper: "2", aluminium: "1/0" },
    { deviceA: 600, copper: "1", aluminium: "2/0" },
    { deviceA: 800, copper: "1/0", aluminium: "3/0" },
    { deviceA: 1000, copper: "2/0", aluminium: "4/0" },
    { deviceA: 1200, copper: "3/0", aluminium: "250" },
    { deviceA: 1600, copper: "4/0", aluminium: "350" },
    { deviceA: 2000, copper: "250", aluminium: "400" },
  ],
})
