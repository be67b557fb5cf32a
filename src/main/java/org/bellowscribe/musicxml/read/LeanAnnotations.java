package org.bellowscribe.musicxml.read;

import jakarta.xml.bind.JAXBElement;
import jakarta.xml.bind.annotation.XmlAttribute;
import jakarta.xml.bind.annotation.XmlElement;
import jakarta.xml.bind.annotation.XmlElementDecl;
import jakarta.xml.bind.annotation.XmlElementRef;
import jakarta.xml.bind.annotation.XmlElementRefs;
import jakarta.xml.bind.annotation.XmlElements;
import jakarta.xml.bind.annotation.XmlSeeAlso;
import jakarta.xml.bind.annotation.XmlTransient;
import jakarta.xml.bind.annotation.XmlType;
import jakarta.xml.bind.annotation.XmlValue;
import java.lang.annotation.Annotation;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import org.audiveris.proxymusic.ScorePartwise;
import org.glassfish.jaxb.core.v2.model.annotation.Locatable;
import org.glassfish.jaxb.runtime.v2.model.annotation.LocatableAnnotation;
import org.jspecify.annotations.Nullable;

/**
 * Shows JAXB only as much of ProxyMusic's classes as a lean score can hold: fields of the {@link Vocabulary}, and classes
 * that such a field asks for. To take in all 231 classes takes half as long again. For one context.
 */
@SuppressWarnings("rawtypes") // As JAXB declares it.
final class LeanAnnotations extends InlineAnnotations {

    private static final String DEFAULT = "##default";
    private static final Annotation[] LEFT_OUT = {annotation(Pattern.class, XmlTransient.class)};
    private static final XmlType ANY_ORDER = annotation(Pattern.class, XmlType.class);

    // Fields come before the classes that they ask for.
    private final Set<Type> asked = new HashSet<>(Set.of(ScorePartwise.class));

    /** Has the annotations that are given instead of ProxyMusic's own. */
    @XmlTransient
    @XmlType(propOrder = {})
    private static final class Pattern {}

    private static <A extends Annotation> A annotation(Class<?> type, Class<A> annotation) {
        return Objects.requireNonNull(type.getAnnotation(annotation));
    }

    @Override
    public Annotation[] getAllFieldAnnotations(Field field, Locatable place) {
        return keeps(field) ? super.getAllFieldAnnotations(field, place) : LEFT_OUT;
    }

    private boolean keeps(Field field) {
        XmlAttribute attribute = field.getAnnotation(XmlAttribute.class);
        if (attribute != null) {
            return keeps(attribute.name(), field, field.getGenericType());
        }
        XmlElements several = field.getAnnotation(XmlElements.class);
        if (several != null) {
            // All of them: each kept one asks for its class.
            return Arrays.stream(several.value())
                            .filter(each -> keeps(each.name(), field, each.type()))
                            .count()
                    > 0;
        }
        XmlElementRefs references = field.getAnnotation(XmlElementRefs.class);
        if (references != null) {
            return Arrays.stream(references.value()).map(XmlElementRef::name).anyMatch(Vocabulary::knows);
        }
        XmlElement element = field.getAnnotation(XmlElement.class);
        return field.isAnnotationPresent(XmlValue.class)
                || keeps(element == null ? DEFAULT : element.name(), field, field.getGenericType());
    }

    private boolean keeps(String name, Field field, Type type) {
        boolean kept = Vocabulary.knows(name.equals(DEFAULT) ? field.getName() : name);
        if (kept) {
            asked.add(type instanceof ParameterizedType list ? list.getActualTypeArguments()[0] : type);
        }
        return kept;
    }

    /** Of the elements that are made by methods, keeps those within classes that are asked for. */
    @Override
    public <A extends Annotation> @Nullable A getMethodAnnotation(Class<A> annotation, Method method, Locatable place) {
        XmlElementDecl element = method.getAnnotation(XmlElementDecl.class);
        if (element != null && annotation == XmlElementDecl.class) {
            if (!asked.contains(element.scope())) {
                return null;
            }
            if (Vocabulary.knows(element.name())) {
                asked.addAll(Arrays.asList(method.getParameterTypes()));
            }
        }
        return super.getMethodAnnotation(annotation, method, place);
    }

    /** Says that classes which no field asks for are nothing to JAXB. */
    @Override
    public boolean hasClassAnnotation(Class type, Class<? extends Annotation> annotation) {
        if (annotation != XmlTransient.class) {
            return super.hasClassAnnotation(type, annotation);
        }
        boolean ours = type == JAXBElement.class || type.getPackage() == ScorePartwise.class.getPackage();
        return ours && !type.isEnum() && !asked.contains(type);
    }

    /** Names no order of fields, for some are left out, and no classes beside those that are asked for. */
    @Override
    public <A extends Annotation> @Nullable A getClassAnnotation(Class<A> annotation, Class type, Locatable place) {
        if (annotation == XmlType.class) {
            return annotation.cast(LocatableAnnotation.create(ANY_ORDER, place));
        }
        return annotation == XmlSeeAlso.class ? null : super.getClassAnnotation(annotation, type, place);
    }
}
