package headertank.app.handover.photo;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of pictures. Every question names the shop. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class PhotoStore {

    private final JdbcClient jdbc;

    PhotoStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Returns the row's id. */
    public long insert(long shop, long check, long author, String item, String caption, StoredPicture picture) {
        return jdbc.sql("""
                        insert into handover_photo (shop_id, check_run_id, item, caption, width, height, jpeg, small_jpeg, author_id)
                        values (:shop, :check, :item, :caption, :width, :height, :jpeg, :small, :author) returning id""")
                .param("shop", shop)
                .param("check", check)
                .param("item", item)
                .param("caption", caption)
                .param("width", picture.width())
                .param("height", picture.height())
                .param("jpeg", picture.jpeg())
                .param("small", picture.smallJpeg())
                .param("author", author)
                .query(Long.class)
                .single();
    }

    /** Pictures by item, oldest first. */
    public Map<String, List<PhotoLine>> lines(long shop, long check) {
        return jdbc
                .sql("""
                        select p.id, p.item, p.caption, p.width, p.height, p.stored_at, a.name
                        from handover_photo p join account a on a.id = p.author_id
                        where p.shop_id = :shop and p.check_run_id = :check order by p.id""")
                .param("shop", shop)
                .param("check", check)
                .query((row, n) -> new PhotoLine(
                        row.getLong("id"),
                        row.getString("item"),
                        row.getString("caption"),
                        row.getInt("width"),
                        row.getInt("height"),
                        row.getString("name"),
                        row.getTimestamp("stored_at").toInstant()))
                .list()
                .stream()
                .collect(Collectors.groupingBy(PhotoLine::item));
    }

    public Optional<byte[]> jpeg(long shop, long id, boolean small) {
        String column = small ? "small_jpeg" : "jpeg";
        return jdbc.sql("select " + column + " as bytes from handover_photo where shop_id = :shop and id = :id")
                .param("shop", shop)
                .param("id", id)
                .query((row, n) -> row.getBytes("bytes"))
                .optional();
    }
}
