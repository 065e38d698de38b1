package org.setwright.engine.throughput;

import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.List;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;

/** Jobs as objects of the plain classes, made before anything is measured. */
final class PlainSites {
	private final ClassLoader classes;

	PlainSites(ClassLoader classes) {
		this.classes = classes;
	}

	/** One job. @param site for Java that is written by hand @param facts for Drools */
	record Plain(Object site, Object[] facts) {
	}

	/** @param job of which all is known */
	Plain of(Job job) {
		try {
			Object site = type("Site").getConstructor().newInstance();
			List<Object> facts = new ArrayList<>();
			for (FactKind kind : PlainClasses.KINDS) {
				List<Object> ofKind = new ArrayList<>();
				for (Fact fact : job.entry(kind).facts()) {
					ofKind.add(fact(kind, fact));
				}
				facts.addAll(ofKind);
				Object held = kind.many() ? ofKind.toArray((Object[]) Array.newInstance(type(kind.name()), 0)) : ofKind.isEmpty() ? null : ofKind.get(0);
				site.getClass().getField(PlainClasses.place(kind)).set(site, held);
			}
			return new Plain(site, facts.toArray());
		} catch (ReflectiveOperationException e) {
			throw new IllegalStateException(e);
		}
	}

	private Object fact(FactKind kind, Fact fact) throws ReflectiveOperationException {
		Object plain = type(kind.name()).getConstructor().newInstance();
		for (Field field : kind.fields()) {
			Object answer = kind.answer(fact, field).value().orElseThrow().plain();
			java.lang.reflect.Field into = plain.getClass().getField(field.name());
			into.set(plain, into.getType().isEnum() ? choice(into.getType(), (String) answer) : answer);
		}
		return plain;
	}

	@SuppressWarnings({ "unchecked", "rawtypes" })
	private static Object choice(Class<?> type, String word) {
		return Enum.valueOf((Class<Enum>) type, word);
	}

	private Class<?> type(String name) throws ClassNotFoundException {
		return classes.loadClass(PlainClasses.PACKAGE + "." + name);
	}
}
