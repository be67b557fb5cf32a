package org.bellowscribe.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** The compiled classes of the tool without those of its tests, read once for all rules. */
final class OurClasses {

    static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.bellowscribe");

    private OurClasses() {}
}
