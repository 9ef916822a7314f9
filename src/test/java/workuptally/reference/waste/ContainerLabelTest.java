package workuptally.reference.waste;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.reference.Reference;

/** Labels of waste containers as laboratories write them (common practice, invented): what they are for, and what they keep out. */
class ContainerLabelTest {
    private static final WasteStreams STREAMS = Reference.load().streams();

    private static ContainerLabel read(String label) {
        return STREAMS.ofLabel(label);
    }

    private static WasteStream stream(String key) {
        return STREAMS.find(key).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "'aqueous, acidic', aqueous-acidic, ''",
        "'Aqueous, neutral or saline', aqueous-neutral, aqueous-acidic aqueous-basic",
        "'aqueous, neutral', aqueous-neutral, aqueous-acidic aqueous-basic",
        "aqueous - NO ACIDS, aqueous-neutral, aqueous-acidic",
        "solids, solids-other, ''",
        "Feststoffe, solids-other, ''",
        "'solids, no halogens', solids-other, halogenated-organic",
        "'silica, dry', drying-agents-silica, ''",
        "Trockenmittel, drying-agents-silica, ''",
        "'solid waste, drying agents', drying-agents-silica, ''",
        "'solid waste (MgSO4, Na2SO4, silica)', drying-agents-silica, ''",
        "solid waste, solids-other, ''",
        "'waste, solid', solids-other, ''",
        "'solid waste, organic', solids-other, ''",
        "MgSO4, drying-agents-silica, ''",
        "'feste Abfälle (Trockenmittel)', drying-agents-silica, ''",
        "fester Abfall, solids-other, ''",
        "'Laborabfälle, fest', solids-other, ''",
        "kontaminierte Feststoffe, solids-contaminated, ''",
        "déchets solides, solids-other, ''",
        "'déchets solides (agents desséchants, silice)', drying-agents-silica, ''",
        "solides contaminés, solids-contaminated, ''",
        "consolidated solvents, non-halogenated-organic, ''",
        "'aqueous, dissolved solids', aqueous-neutral, ''",
        "aqueous (no acid), aqueous-neutral, aqueous-acidic",
        "'aqueous, keep acids out', aqueous-neutral, aqueous-acidic",
        "'aqueous, avoid acid', aqueous-neutral, aqueous-acidic",
        "aqueous pH > 7, aqueous-neutral, aqueous-acidic",
        "aqueous pH 6-9, aqueous-neutral, aqueous-acidic aqueous-basic",
        "'aqueous, neutral only', aqueous-neutral, aqueous-acidic aqueous-basic",
        "aqueous other than acid, aqueous-neutral, aqueous-acidic",
        "aqueous minus acids, aqueous-neutral, aqueous-acidic",
        "aqueous; acids -> W-2, aqueous-neutral, aqueous-acidic",
        "'aqueous, acids in separate can', aqueous-neutral, aqueous-acidic",
        "'aqueous, acids elsewhere', aqueous-neutral, aqueous-acidic",
        "'wässrig, Säuren nur nach Rücksprache', aqueous-neutral, aqueous-acidic",
        "'aqueous, acidic, no smoking', aqueous-acidic, ''",
        "'aqueous acidic; do not seal tightly', aqueous-acidic, ''",
        "'aqueous, no organics', aqueous-neutral, non-halogenated-organic",
        "'aqueous, not acidic', aqueous-neutral, aqueous-acidic",
        "'aqueous, not acidic or basic', aqueous-neutral, aqueous-acidic aqueous-basic",
        "acid-free aqueous, aqueous-neutral, aqueous-acidic",
        "non-acidic aqueous, aqueous-neutral, aqueous-acidic",
        "'aqueous, free of acid', aqueous-neutral, aqueous-acidic",
        "'wässrig, keine Säuren', aqueous-neutral, aqueous-acidic",
        "'wässrig, säurefrei', aqueous-neutral, aqueous-acidic",
        "aqueux sans acide, aqueous-neutral, aqueous-acidic",
        "'aqueux, pas d''acides', aqueous-neutral, aqueous-acidic",
        "'aqueous; acids not allowed', aqueous-neutral, aqueous-acidic",
        "'aqueous, no solvents', aqueous-neutral, non-halogenated-organic",
        "keine Säuren, '', aqueous-acidic",
        "no acids, '', aqueous-acidic",
        "'aqueous, acidic, no cyanide', aqueous-acidic, cyanide-azide",
        "aqueous acidic (cyanide-free), aqueous-acidic, cyanide-azide",
        "'aqueous, acidic, cyanidfrei', aqueous-acidic, cyanide-azide",
        "'aqueous, acidic; keep away from cyanide', aqueous-acidic, cyanide-azide",
        "'aqueous, no cyanide, acidic', aqueous-acidic, cyanide-azide",
        "'aqueous, no bases, metals or oxidisers', aqueous-neutral, aqueous-basic aqueous-heavy-metal oxidiser",
        "'aqueous acidic, non-halogenated', aqueous-acidic, halogenated-organic",
        "aqueous acidic without halogens, aqueous-acidic, halogenated-organic",
        "not halogenated, non-halogenated-organic, halogenated-organic",
        "no halogenated solvents, non-halogenated-organic, halogenated-organic",
        "solvents without halogen, non-halogenated-organic, halogenated-organic",
        "nonhalogenated, non-halogenated-organic, halogenated-organic",
        "Lösemittel halogenfrei, non-halogenated-organic, halogenated-organic",
        "chlorfrei, non-halogenated-organic, ''",
        "'non-halogenated, no oxidisers', non-halogenated-organic, halogenated-organic oxidiser",
        "solvants non halogénés, non-halogenated-organic, halogenated-organic",
        "halogenated solvents, halogenated-organic, ''",
        "'Waste No. 3, acidic', aqueous-acidic, ''",
        "'can no 5 basic', aqueous-basic, ''",
        "'non-halogenated solvents, no heavy metals', non-halogenated-organic, aqueous-heavy-metal halogenated-organic",
        "'solvents, metal-free', non-halogenated-organic, aqueous-heavy-metal",
        "solvents with heavy metals, organic-heavy-metal, ''",
        "nitric acid, oxidiser, ''",
        "'nitric acid waste, no organics', oxidiser, non-halogenated-organic",
        "Salpetersäure, oxidiser, ''",
        "acids; no solvent, aqueous-acidic, non-halogenated-organic",
        "aqueous acid (<1 % organics), aqueous-acidic, non-halogenated-organic",
        "'aqueous acidic, lösungsmittelfrei', aqueous-acidic, non-halogenated-organic",
        "'Säuren, keine Organik', aqueous-acidic, non-halogenated-organic",
        "acides sans solvant, aqueous-acidic, non-halogenated-organic",
        "inorganic acids only, aqueous-acidic, non-halogenated-organic",
        "nur anorganische Säuren, aqueous-acidic, non-halogenated-organic",
        "nonane and other solvents, non-halogenated-organic, ''"
    })
    void denialsAreReadAsWhatIsKeptOut(String label, String stream, String keptOut) {
        ContainerLabel read = read(label);
        assertEquals(stream, read.stream().map(WasteStream::key).orElse(""));
        assertEquals(
                keptOut, read.keptOut().stream().map(WasteStream::key).sorted().collect(Collectors.joining(" ")));
        assertFalse(read.unread(), read::toString);
    }

    /** Which of them is a material, the tables tell. */
    @ParameterizedTest
    @CsvSource({
        "'aqueous, no DCM', dcm",
        "'aqueous, acidic (no nitric acid)', nitric acid",
        "'aqueous, not for HNO3', hno3"
    })
    void whatNoStreamTellsIsKeptOutByItsName(String label, String name) {
        assertEquals(List.of(name), read(label).keptOutByName());
        assertFalse(read(label).unread());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "aqueous, no acids, metals and bases",
                "halogenated: no",
                "sulfuric acid only",
                "nur Schwefelsäure",
                "solvents, no"
            })
    void aDenialThatIsNotUnderstoodIsSaid(String label) {
        assertTrue(read(label).unread(), label);
    }

    @Test
    void whatIsKeptOutIsKeptOutUnderEachNameOfIt() {
        assertTrue(STREAMS.isKeptOut(stream("aqueous-acidic"), stream("aqueous-acidic")));
        assertTrue(STREAMS.isKeptOut(stream("organic-heavy-metal"), stream("aqueous-heavy-metal")));
        assertTrue(STREAMS.isKeptOut(stream("mercury"), stream("aqueous-heavy-metal")));
        assertTrue(STREAMS.isKeptOut(stream("aqueous-organic"), stream("non-halogenated-organic")));
        assertFalse(STREAMS.isKeptOut(stream("aqueous-organic"), stream("halogenated-organic")));
        assertFalse(STREAMS.isKeptOut(stream("aqueous-basic"), stream("aqueous-acidic")));
    }

    /** A word that is one in the singular, or part of a formula, is no slip of one; a slip still is. */
    @ParameterizedTest
    @CsvSource({
        "'solid waste, drying agents', false",
        "solid waste, false",
        "'drying agents, MgSO4', false",
        "'aqueous, basc', true",
        "'solid waste, acdic', true"
    })
    void aSingularIsNoSlip(String label, boolean unread) {
        assertEquals(unread, read(label).unread());
    }
}
