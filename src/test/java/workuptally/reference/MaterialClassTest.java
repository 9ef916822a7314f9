package workuptally.reference;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import org.junit.jupiter.api.Test;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.substances.MaterialClass;

/** A class that the program asks for and no table has would never be found, in silence. */
class MaterialClassTest {
    @Test
    void everyClassAskedForIsListed() throws IllegalAccessException {
        Reactivity reactivity = Reference.load().reactivity();
        Field[] constants = MaterialClass.class.getFields();
        assertTrue(constants.length > 20);
        for (Field constant : constants) {
            String key = (String) constant.get(null);
            assertTrue(reactivity.group(key).isPresent(), key + " is no class of reactivity-groups.csv");
        }
    }
}
