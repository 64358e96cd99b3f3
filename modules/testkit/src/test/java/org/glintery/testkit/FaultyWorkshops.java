package org.glintery.testkit;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Changed;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.contract.WorkshopContract;

/** Workshops with one fault each. */
final class FaultyWorkshops {
    private FaultyWorkshops() {}

    private interface Fault {
        Object call(Workshop workshop, Method method, Object[] arguments) throws ReflectiveOperationException;
    }

    private static Workshop with(Fault fault) {
        Workshop sound = new MemoryWorkshop();
        return (Workshop) Proxy.newProxyInstance(
                Workshop.class.getClassLoader(), new Class<?>[] {Workshop.class}, (proxy, method, arguments) -> {
                    try {
                        return fault.call(sound, method, arguments);
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
    }

    /** Overwrites what was changed in the meantime. */
    static class ForgetsPreconditions extends WorkshopContract {
        @Override
        protected Workshop create() {
            return with((workshop, method, arguments) -> {
                if (method.getName().equals("apply")) {
                    ChangeSet change = (ChangeSet) arguments[0];
                    return workshop.apply(
                            new ChangeSet(change.id(), change.sentence(), List.of(), change.operations()));
                }
                return method.invoke(workshop, arguments);
            });
        }
    }

    /** Says that something was taken back and takes nothing back. */
    static class UndoesNothing extends WorkshopContract {
        @Override
        protected Workshop create() {
            return with((workshop, method, arguments) -> method.getName().equals("undo")
                    ? Result.ok(new Applied(new java.util.UUID(0, 0), 1))
                    : method.invoke(workshop, arguments));
        }
    }

    /** Shows the view of a moment ago. */
    static class LagsBehind extends WorkshopContract {
        @Override
        protected Workshop create() {
            View[] last = new View[1];
            return with((workshop, method, arguments) -> {
                if (method.getName().equals("view")) {
                    View before = last[0] == null ? workshop.view() : last[0];
                    last[0] = workshop.view();
                    return before;
                }
                return method.invoke(workshop, arguments);
            });
        }
    }

    /** Tells of changes on the thread of whoever made them. */
    static class TellsOnTheCallersThread extends WorkshopContract {
        @Override
        protected Workshop create() {
            List<Consumer<Changed>> listeners = new ArrayList<>();
            return with((workshop, method, arguments) -> {
                if (method.getName().equals("listen")) {
                    @SuppressWarnings("unchecked") // as the method says
                    Consumer<Changed> listener = (Consumer<Changed>) arguments[0];
                    listeners.add(listener);
                    return (Workshop.Registration) () -> listeners.remove(listener);
                }
                Object result = method.invoke(workshop, arguments);
                if (method.getName().equals("apply")) {
                    var news = new Changed(
                            workshop.view().revision(),
                            Set.copyOf(workshop.view().putOrder()),
                            false);
                    listeners.forEach(listener -> listener.accept(news));
                }
                return result;
            });
        }
    }
}
