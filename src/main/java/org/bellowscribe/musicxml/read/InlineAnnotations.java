package org.bellowscribe.musicxml.read;

import java.lang.annotation.Annotation;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import org.glassfish.jaxb.core.v2.model.annotation.Locatable;
import org.glassfish.jaxb.core.v2.model.core.ErrorHandler;
import org.glassfish.jaxb.runtime.v2.model.annotation.RuntimeAnnotationReader;
import org.glassfish.jaxb.runtime.v2.model.annotation.RuntimeInlineAnnotationReader;
import org.jspecify.annotations.Nullable;

/** Tells JAXB the annotations of a class as they are written, but for what is overridden: JAXB's own reader is final. */
@SuppressWarnings("rawtypes") // As JAXB declares it.
abstract class InlineAnnotations implements RuntimeAnnotationReader {

    private final RuntimeAnnotationReader written = new RuntimeInlineAnnotationReader();

    @Override
    public void setErrorHandler(ErrorHandler handler) {
        written.setErrorHandler(handler);
    }

    @Override
    public <A extends Annotation> @Nullable A getFieldAnnotation(Class<A> annotation, Field field, Locatable place) {
        return written.getFieldAnnotation(annotation, field, place);
    }

    @Override
    public boolean hasFieldAnnotation(Class<? extends Annotation> annotation, Field field) {
        return written.hasFieldAnnotation(annotation, field);
    }

    @Override
    public Annotation[] getAllFieldAnnotations(Field field, Locatable place) {
        return written.getAllFieldAnnotations(field, place);
    }

    @Override
    public <A extends Annotation> @Nullable A getMethodAnnotation(
            Class<A> annotation, Method getter, Method setter, Locatable place) {
        return written.getMethodAnnotation(annotation, getter, setter, place);
    }

    @Override
    public boolean hasMethodAnnotation(
            Class<? extends Annotation> annotation, String name, Method getter, Method setter, Locatable place) {
        return written.hasMethodAnnotation(annotation, name, getter, setter, place);
    }

    @Override
    public Annotation[] getAllMethodAnnotations(Method method, Locatable place) {
        return written.getAllMethodAnnotations(method, place);
    }

    @Override
    public <A extends Annotation> @Nullable A getMethodAnnotation(Class<A> annotation, Method method, Locatable place) {
        return written.getMethodAnnotation(annotation, method, place);
    }

    @Override
    public boolean hasMethodAnnotation(Class<? extends Annotation> annotation, Method method) {
        return written.hasMethodAnnotation(annotation, method);
    }

    @Override
    public <A extends Annotation> @Nullable A getMethodParameterAnnotation(
            Class<A> annotation, Method method, int parameter, Locatable place) {
        return written.getMethodParameterAnnotation(annotation, method, parameter, place);
    }

    @Override
    public boolean hasClassAnnotation(Class type, Class<? extends Annotation> annotation) {
        return written.hasClassAnnotation(type, annotation);
    }

    @Override
    public <A extends Annotation> @Nullable A getClassAnnotation(Class<A> annotation, Class type, Locatable place) {
        return written.getClassAnnotation(annotation, type, place);
    }

    @Override
    public <A extends Annotation> @Nullable A getPackageAnnotation(Class<A> annotation, Class type, Locatable place) {
        return written.getPackageAnnotation(annotation, type, place);
    }

    @Override
    public Class getClassValue(Annotation annotation, String name) {
        return (Class) written.getClassValue(annotation, name);
    }

    @Override
    public Class[] getClassArrayValue(Annotation annotation, String name) {
        return (Class[]) written.getClassArrayValue(annotation, name);
    }
}
