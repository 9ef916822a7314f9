package workuptally.book.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.book.words.SameName;
import workuptally.model.Lot;
import workuptally.model.Product;

/**
 * Products that are one substance as salt, base, hydrate or solvate. The form that is isolated, that of the first lot, else the one that the
 * others name, stands for all of them: theory is in it, and what is found of another form counts as it.
 */
final class ProductForms {
    private ProductForms() {}

    /** The products with every form settled, in the order of the table. */
    static List<Product> settled(List<Product> products, List<Lot> lots) {
        if (products.stream().allMatch(p -> p.formOf().isEmpty())) {
            return products;
        }
        List<Product> settled = new ArrayList<>();
        for (Product product : products) {
            List<Product> forms = forms(product, products);
            Product isolated = isolated(forms, lots);
            if (forms.size() == 1) {
                settled.add(product.formOf().isEmpty() ? product : isolated.isolatedOf(List.of()));
            } else {
                settled.add(product == isolated ? product.isolatedOf(forms) : product.asFormOf(isolated.name()));
            }
        }
        return settled;
    }

    /** All forms of a product, itself among them, in the order of the table. */
    private static List<Product> forms(Product product, List<Product> products) {
        List<Product> forms = new ArrayList<>(List.of(product));
        for (int found = 0; found < forms.size(); found++) {
            Product form = forms.get(found);
            products.stream()
                    .filter(other -> !forms.contains(other)
                            && (isNamed(form, other, products) || isNamed(other, form, products)))
                    .forEach(forms::add);
        }
        return products.stream().filter(forms::contains).toList();
    }

    /** True where a product says that it is a form of another. */
    private static boolean isNamed(Product form, Product other, List<Product> products) {
        return form != other
                && SameName.of(products, Product::name, form.formOf())
                        .filter(named -> named == other)
                        .isPresent();
    }

    private static Product isolated(List<Product> forms, List<Lot> lots) {
        Optional<Product> weighed = lots.stream()
                .flatMap(l -> forms.stream().filter(f -> f.name().equalsIgnoreCase(l.product())))
                .findFirst();
        return weighed.or(() -> forms.stream().filter(f -> f.formOf().isEmpty()).findFirst())
                .orElse(forms.get(0));
    }
}
