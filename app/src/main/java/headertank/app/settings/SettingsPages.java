package headertank.app.settings;

import headertank.app.language.ModelWords;
import headertank.app.problem.ConflictException;
import headertank.app.shop.Paper;
import headertank.app.shop.Shop;
import headertank.app.shop.Shops;
import headertank.app.shop.TimeZones;
import headertank.app.unit.UnitSystem;
import headertank.calc.verdict.Threshold;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The owner's page of settings. */
@Controller
class SettingsPages {

    private final ShopSettings settings;
    private final Shops shops;
    private final MessageSource messages;
    private final ModelWords words;

    SettingsPages(ShopSettings settings, Shops shops, MessageSource messages, ModelWords words) {
        this.settings = settings;
        this.shops = shops;
        this.messages = messages;
        this.words = words;
    }

    @GetMapping("/settings")
    String form(Model model) {
        Shop shop = shops.current();
        model.addAttribute("form", SettingsForm.of(shop, shop.settingsVersion()));
        return page(shop, model);
    }

    @PostMapping("/settings")
    String save(
            @ModelAttribute("form") SettingsForm form,
            BindingResult faults,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Shop shop = shops.current();
        Optional<Shop> then = new SettingsReader(shop, form, faults).read();
        if (then.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(shop, model);
        }
        try {
            settings.change(then.get());
        } catch (ConflictException e) {
            response.setStatus(HttpStatus.CONFLICT.value());
            model.addAttribute("theirs", SettingsForm.of(shop, shop.settingsVersion()));
            return page(shop, model);
        }
        redirect.addFlashAttribute("done", "settings.saved");
        return "redirect:/settings";
    }

    private String page(Shop shop, Model model) {
        model.addAttribute("hints", hints(shop.unitSystem()));
        model.addAttribute("systems", UnitSystem.values());
        model.addAttribute("papers", Paper.values());
        model.addAttribute("zones", zones(shop.timeZone()));
        model.addAttribute("languages", new String[] {"en", "de"});
        model.addAttribute("version", shop.settingsVersion());
        return "settings/form";
    }

    /** Every zone to choose from, and the shop's own even if its name has gone out of use. */
    private static List<String> zones(String own) {
        List<String> zones = TimeZones.names();
        return zones.contains(own)
                ? zones
                : Stream.concat(Stream.of(own), zones.stream()).toList();
    }

    /** What is usual, what is allowed and what that rests on, for each number. */
    private Map<String, String> hints(UnitSystem system) {
        Map<String, String> hints = new LinkedHashMap<>();
        Arrays.stream(SettingField.values()).forEach(f -> {
            String least = f.show(f.allowed().min(), system);
            String most = f.show(f.allowed().max(), system);
            Optional<Threshold> threshold = f.threshold();
            hints.put(
                    f.key(),
                    threshold.isPresent()
                            ? say(
                                    "settings.hint.threshold",
                                    f.show(threshold.get().standard(), system),
                                    words.of(threshold.get().basis().with()),
                                    least,
                                    most)
                            : say("settings.hint.figure", least, most));
        });
        return hints;
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }
}
