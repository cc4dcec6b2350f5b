package headertank.app.fuzz;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.springframework.core.MethodParameter;
import org.springframework.core.ResolvableType;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * A route as its handler declares it.
 *
 * @param fields it may be sent, by what its parameters and the records of its forms are called
 */
record Route(String method, String pattern, List<Field> fields) {

    record Field(String name, Class<?> type) {}

    boolean takesFiles() {
        return fields.stream().anyMatch(f -> MultipartFile.class.isAssignableFrom(f.type()));
    }

    /** Every route that there is. */
    static List<Route> of(List<RequestMappingHandlerMapping> mappings) {
        List<Route> routes = new ArrayList<>();
        for (RequestMappingHandlerMapping mapping : mappings) {
            mapping.getHandlerMethods().forEach((info, handler) -> add(routes, info, handler));
        }
        routes.sort((a, b) -> (a.method + a.pattern).compareTo(b.method + b.pattern));
        return routes;
    }

    private static void add(List<Route> routes, RequestMappingInfo info, HandlerMethod handler) {
        for (String pattern : info.getPatternValues()) {
            for (RequestMethod method : info.getMethodsCondition().getMethods()) {
                routes.add(new Route(method.name(), pattern, fields(handler)));
            }
        }
    }

    private static List<Field> fields(HandlerMethod handler) {
        List<Field> fields = new ArrayList<>();
        for (MethodParameter parameter : handler.getMethodParameters()) {
            Class<?> type = parameter.getParameterType();
            if (type.isRecord()) {
                for (RecordComponent component : type.getRecordComponents()) {
                    ResolvableType given = ResolvableType.forType(component.getGenericType());
                    Class<?> plain = given.hasGenerics()
                            ? given.getGeneric(given.getGenerics().length - 1).resolve(Object.class)
                            : component.getType();
                    fields.add(new Field(component.getName(), plain));
                }
            } else if (parameter.hasParameterAnnotation(RequestParam.class)
                    && !java.util.Map.class.isAssignableFrom(type)) {
                parameter.initParameterNameDiscovery(new org.springframework.core.DefaultParameterNameDiscoverer());
                fields.add(new Field(parameter.getParameterName(), type));
            }
        }
        return fields;
    }
}
