import { boilerHorsepower, btu, btuPerHour, cubicFoot, gallon, hour } from './conversion-factors.js'
import { caseSensitiveUnit, measuredQuantity, printedIn, unit } from './measured-quantity.js'

const btuAnHour = unit('Btu/h', btuPerHour, ['Btu/hr', 'Btuh', 'Btu/hour'])
const watts = unit('W', 1, ['watt', 'watts'])
const kilowatts = unit('kW', 1000, ['kilowatt', 'kilowatts'])
const voltAmperes = unit('VA', 1, ['volt-amps', 'volt-amperes'])
const btuPerCubicFoot = unit('Btu/ft3', btu / cubicFoot, ['Btu/cf', 'Btu/cu ft', 'Btu/cubic foot'])
const megajoulesPerCubicMeter = caseSensitiveUnit('MJ/m3', 1e6)

const thousandOrMillion = 'M may mean a thousand or a million here; write kBtu/h or MMBtu/h'

export const energyUnits = Object.freeze({
  heatRate: measuredQuantity({
    spoken: 'a heat rate',
    units: [
      btuAnHour,
      unit('MBH', 1000 * btuPerHour),
      kilowatts,
      watts,
      unit('kBtu/h', 1000 * btuPerHour, ['kBtu/hr', 'kBtuh']),
      unit('MMBtu/h', 1e6 * btuPerHour, ['MMBtu/hr', 'MMBtuh']),
      unit('boiler hp', boilerHorsepower, ['boiler horsepower']),
    ],
    suggested: btuAnHour,
    least: 0,
    refused: { 'mbtu/h': thousandOrMillion, 'mbtu/hr': thousandOrMillion, mbtuh: thousandOrMillion },
    printed: { ip: [printedIn(btuAnHour, 0)], si: [printedIn(watts, 0), printedIn(kilowatts, 2, 1000)] },
  }),
  apparentPower: measuredQuantity({
    spoken: 'an apparent power',
    units: [voltAmperes, unit('kVA', 1000)],
    suggested: voltAmperes,
    least: 0,
    printed: { ip: [printedIn(voltAmperes, 2)], si: [printedIn(voltAmperes, 2)] },
  }),
  energyPerVolume: measuredQuantity({
    spoken: 'an energy per volume',
    units: [
      btuPerCubicFoot,
      megajoulesPerCubicMeter,
      unit('Btu/gal', btu / gallon),
      unit('kWh/m3', 1000 * hour),
      unit('kJ/m3', 1000),
      unit('J/m3', 1),
    ],
    suggested: btuPerCubicFoot,
    least: 0,
    printed: { ip: [printedIn(btuPerCubicFoot, 0)], si: [printedIn(megajoulesPerCubicMeter, 2)] },
  }),
})
