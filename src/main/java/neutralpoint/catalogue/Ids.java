package neutralpoint.catalogue;

/**
 * Every id of the catalogue that Java names. The build holds each against the catalogue and ends with the nearest valid id where
 * one is not there; a literal that repeats one elsewhere fails a test.
 */
public final class Ids {
    private Ids() {}

    /** Findings, readings among them. */
    public static final class FindingId {
        public static final String ALKALINITY_MG_PER_LITRE = "alkalinity-mg-per-litre";
        public static final String ALUMINIUM_IN_BOILER = "aluminium-in-boiler";
        public static final String BLEED_WATER = "bleed-water";
        public static final String BOILER_FLOW_CELSIUS = "boiler-flow-celsius";
        public static final String BOILER_FLOW_RETURN_KELVIN = "boiler-flow-return-kelvin";
        public static final String BOILER_OUTPUT_KW = "boiler-output-kw";
        public static final String CHEMICALS_IN = "chemicals-in";
        public static final String CLEANER_DOSE_PERCENT = "cleaner-dose-percent";
        public static final String COLD_BASE_COUNT = "cold-base-count";
        public static final String COLD_SUPPLY_LITRES_PER_MINUTE = "cold-supply-litres-per-minute";
        public static final String COMPLAINT = "complaint";
        public static final String CONTAINER_SIZE_LITRES = "container-size-litres";
        public static final String COPPER_MG_PER_LITRE = "copper-mg-per-litre";
        public static final String DRAIN_WATER = "drain-water";
        public static final String EXCHANGER_KIND = "exchanger-kind";
        public static final String FEED_AND_VENT_JOIN = "feed-and-vent-join";
        public static final String FEED_AND_VENT_LAYOUT = "feed-and-vent-layout";
        public static final String FEED_TANK_ROOM_LITRES = "feed-tank-room-litres";
        public static final String FILL_HARDNESS_WORKED_OUT = "fill-hardness-worked-out";
        public static final String FLUSHING_HEATER_KILOWATTS = "flushing-heater-kilowatts";
        public static final String FLUSHING_PUMP_LITRES_PER_MINUTE = "flushing-pump-litres-per-minute";
        public static final String GAUGE_TELLS = "gauge-tells";
        public static final String HARDNESS_MG_PER_LITRE = "hardness-mg-per-litre";
        public static final String HEAT_SOURCE = "heat-source";
        public static final String HEATING_FILLED_BY = "heating-filled-by";
        public static final String HIGHEST_LOGGED_BAR = "highest-logged-bar";
        public static final String HIGHEST_RADIATOR_ABOVE_GAUGE_M = "highest-radiator-above-gauge-m";
        public static final String HOT_WATER_MADE_BY = "hot-water-made-by";
        public static final String HOTTEST_READING_CELSIUS = "hottest-reading-celsius";
        public static final String INHIBITOR_DOSE_PERCENT = "inhibitor-dose-percent";
        public static final String INHIBITOR_TEST = "inhibitor-test";
        public static final String IRON_MG_PER_LITRE = "iron-mg-per-litre";
        public static final String LARGEST_PIPE = "largest-pipe";
        public static final String LEAK_WORKED_OUT = "leak-worked-out";
        public static final String LOFT_TANKS = "loft-tanks";
        public static final String MAINS_WATER_CONDUCTIVITY = "mains-water-conductivity";
        public static final String MAINS_WATER_PH = "mains-water-ph";
        public static final String NEUTRALISER_DOSE_PERCENT = "neutraliser-dose-percent";
        public static final String OLD_VENT_LEFT = "old-vent-left";
        public static final String PRESSURE_COLD_BAR = "pressure-cold-bar";
        public static final String PRESSURE_HOT_BAR = "pressure-hot-bar";
        public static final String PUMP_AND_VESSEL_PLACE = "pump-and-vessel-place";
        public static final String PUMP_HEAD_M = "pump-head-m";
        public static final String RADIATOR_PATTERN = "radiator-pattern";
        public static final String RADIATOR_PIPING = "radiator-piping";
        public static final String RED_LINES = "red-lines";
        public static final String ROOM_CELSIUS = "room-celsius";
        public static final String SECOND_GAUGE = "second-gauge";
        public static final String SECOND_GAUGE_BAR = "second-gauge-bar";
        public static final String SMALL_TANK_SERVES = "small-tank-serves";
        public static final String SURVEY_PATTERN = "survey-pattern";
        public static final String SYSTEM_CONTENT_LITRES = "system-content-litres";
        public static final String SYSTEM_WATER_CONDUCTIVITY = "system-water-conductivity";
        public static final String SYSTEM_WATER_PH = "system-water-ph";
        public static final String TAIL_DROP_DEGREES = "tail-drop-degrees";
        public static final String TANK_ABOVE_BOILER_M = "tank-above-boiler-m";
        public static final String TANK_ABOVE_HIGHEST_PART_M = "tank-above-highest-part-m";
        public static final String TANK_ROOM_WORKED_OUT = "tank-room-worked-out";
        public static final String TANK_WARMTH = "tank-warmth";
        public static final String TANK_WATER_CELSIUS = "tank-water-celsius";
        public static final String TDS_OF_MAINS_PERCENT = "tds-of-mains-percent";
        public static final String TEE_RESISTANCE_PERCENT = "tee-resistance-percent";
        public static final String TOP_OVER_BASE_DEGREES = "top-over-base-degrees";
        public static final String VENT_RISE_MM = "vent-rise-mm";
        public static final String VENT_TEE_BELOW_WATER_M = "vent-tee-below-water-m";
        public static final String VENT_WORKED_OUT = "vent-worked-out";
        public static final String VESSEL_CHARGE_BAR = "vessel-charge-bar";
        public static final String VESSEL_SIZE_LITRES = "vessel-size-litres";
        public static final String VESSEL_WORKED_OUT = "vessel-worked-out";
        public static final String WATER_PH_WORKED_OUT = "water-ph-worked-out";
        public static final String WATER_SALTS_WORKED_OUT = "water-salts-worked-out";

        private FindingId() {}
    }

    /** Causes. */
    public static final class CauseId {
        public static final String SCALE_ON_EXCHANGER = "scale-on-exchanger";

        private CauseId() {}
    }

    /** Courses of action. */
    public static final class CourseId {
        public static final String FULL_FLUSH = "full-flush";
        public static final String LOOK_FURTHER = "look-further";
        public static final String NO_WET_SIDE_WORK = "no-wet-side-work";
        public static final String PARTIAL_CLEANSE = "partial-cleanse";
        public static final String REFER = "refer";
        public static final String VENT_AND_BALANCE = "vent-and-balance";

        private CourseId() {}
    }

    /** Whole systems and features. */
    public static final class ArrangementId {
        public static final String COMBINATION_BOILER = "combination-boiler";
        public static final String CONVERTED_TO_SEALED = "converted-to-sealed";
        public static final String DIRECT_CYLINDER = "direct-cylinder";
        public static final String GRAVITY_HOT_WATER = "gravity-hot-water";
        public static final String HEAT_PUMP_SYSTEM = "heat-pump-system";
        public static final String MICROBORE = "microbore";
        public static final String ONE_PIPE_LOOP = "one-pipe-loop";
        public static final String OPEN_VENTED_CLOSE_COUPLED = "open-vented-close-coupled";
        public static final String PARTS_IN_BOILER_CASE = "parts-in-boiler-case";
        public static final String S_PLAN = "s-plan";
        public static final String SINGLE_FEED_CYLINDER = "single-feed-cylinder";
        public static final String SINGLE_ZONE_VALVE = "single-zone-valve";
        public static final String SOLID_FUEL = "solid-fuel";
        public static final String SYSTEM_BOILER = "system-boiler";
        public static final String THERMAL_STORE = "thermal-store";
        public static final String UNDER_FLOOR_ZONES = "under-floor-zones";
        public static final String W_PLAN = "w-plan";
        public static final String Y_PLAN = "y-plan";

        private ArrangementId() {}
    }

    /** What rules and sums may rely on in a system. */
    public static final class TraitId {
        public static final String LOFT_TANK = "loft-tank";
        public static final String NO_ADDITIVES = "no-additives";
        public static final String NO_FLUSH = "no-flush";
        public static final String OPEN_VENTED = "open-vented";
        public static final String SEALED = "sealed";

        private TraitId() {}
    }
}
