/**
 * The physics of a car's cooling, behind one door: {@code headertank.calc.Rater}. What is exported is what goes in, what comes
 * out, and what a plug-in implements; the models stay inside.
 *
 * <p>Hipparchus names its modules by its files only, so that their names may change with a later version of it.
 */
@SuppressWarnings("requires-automatic")
module headertank.calc {
    requires de.siegmar.fastcsv;
    requires hipparchus.core;
    requires hipparchus.ode;

    exports headertank.calc;
    exports headertank.calc.carspec;
    exports headertank.calc.cause;
    exports headertank.calc.choice;
    exports headertank.calc.coreclass;
    exports headertank.calc.duty;
    exports headertank.calc.evidence;
    exports headertank.calc.quantity;
    exports headertank.calc.result;
    exports headertank.calc.risk;
    exports headertank.calc.verdict;

    uses headertank.calc.cause.Cause;
    uses headertank.calc.coreclass.CoreClassSource;
    uses headertank.calc.duty.DutySource;
    uses headertank.calc.risk.RiskRule;
    uses headertank.calc.verdict.VerdictPolicy;

    provides headertank.calc.cause.Cause with
            headertank.calc.cause.AirInCoolant,
            headertank.calc.cause.AirSideBlocked,
            headertank.calc.cause.BypassOpen,
            headertank.calc.cause.CapWeak,
            headertank.calc.cause.CoolantFlowLow,
            headertank.calc.cause.DayHotter,
            headertank.calc.cause.DutyHarder,
            headertank.calc.cause.ExhaustNear,
            headertank.calc.cause.FanBackwards,
            headertank.calc.cause.FanLate,
            headertank.calc.cause.FanWeak,
            headertank.calc.cause.FansOut,
            headertank.calc.cause.GasInCoolant,
            headertank.calc.cause.GaugeInHose,
            headertank.calc.cause.GaugeLagging,
            headertank.calc.cause.GaugeOff,
            headertank.calc.cause.HigherUp,
            headertank.calc.cause.HotAirReturns,
            headertank.calc.cause.MoreHeat,
            headertank.calc.cause.NothingWrong,
            headertank.calc.cause.OneFanOut,
            headertank.calc.cause.SpecDiffers,
            headertank.calc.cause.ThermostatLate,
            headertank.calc.cause.ThermostatOpen,
            headertank.calc.cause.ThermostatShut,
            headertank.calc.cause.TubesFouled;
    provides headertank.calc.coreclass.CoreClassSource with
            headertank.calc.coreclass.StandardCoreClasses;
    provides headertank.calc.duty.DutySource with
            headertank.calc.duty.StandardDuties;
    provides headertank.calc.risk.RiskRule with
            headertank.calc.risk.AbruptFanStart,
            headertank.calc.risk.BargainCore,
            headertank.calc.risk.CapTooWeak,
            headertank.calc.risk.ClutchFanTilted,
            headertank.calc.risk.CoolantFreezes,
            headertank.calc.risk.FanSetBelowThermostat,
            headertank.calc.risk.ImpossibleFanClaim,
            headertank.calc.risk.NoShroud,
            headertank.calc.risk.NoWayOut,
            headertank.calc.risk.OilOverTarget,
            headertank.calc.risk.PushingFan,
            headertank.calc.risk.SensorInHose,
            headertank.calc.risk.SetupFromAlcoholCar,
            headertank.calc.risk.ThermostatRemoved;
    provides headertank.calc.verdict.VerdictPolicy with
            headertank.calc.verdict.StandardPolicy;
}
