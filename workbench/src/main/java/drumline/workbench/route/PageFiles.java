package drumline.workbench.route;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page's files, as they lie in the program. */
final class PageFiles {
  private static final String ROOT = "/drumline/workbench/";
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]+(?:[./][A-Za-z0-9_-]+)*");
  private static final Pattern IMPORT_MAP =
      Pattern.compile("(?s)<script type=\"importmap\">(.*?)</script>");
  private static final Map<String, String> MEDIA =
      Map.of(
          "html", "text/html",
          "js", "text/javascript",
          "mjs", "text/javascript",
          "css", "text/css",
          "svg", "image/svg+xml",
          "json", "application/json",
          "woff2", "font/woff2",
          "png", "image/png");

  private final Map<String, PageFile> files = new ConcurrentHashMap<>();

  /** A file with what browsers need to know about it. */
  static final class PageFile {
    private final byte[] content;
    private final String mediaType;
    private final String mark;

    private PageFile(byte[] content, String mediaType) {
      this.content = content;
      this.mediaType = mediaType;
      this.mark = "\"" + digest(content) + "\"";
    }

    /** Its bytes. */
    InputStream content() {
      return new ByteArrayInputStream(content);
    }

    /** What it is. */
    String mediaType() {
      return mediaType;
    }

    /** Changes whenever the content does. */
    String mark() {
      return mark;
    }

    private String text() {
      return new String(content, StandardCharsets.UTF_8);
    }
  }

  /** A file below {@code page} or {@code vendor}; empty where there is none. */
  Optional<PageFile> find(String folder, String name) {
    String type = MEDIA.get(name.substring(name.lastIndexOf('.') + 1));
    if (type == null || !NAME.matcher(name).matches()) {
      return Optional.empty();
    }
    String path = ROOT + folder + "/" + name;
    PageFile known = files.get(path);
    if (known != null) {
      return Optional.of(known);
    }
    Optional<PageFile> read = read(path).map(bytes -> new PageFile(bytes, type));
    read.ifPresent(file -> files.put(path, file));
    return read;
  }

  /** The contract. */
  static String contract() {
    return new String(read(ROOT + "openapi.yaml").orElseThrow(), StandardCharsets.UTF_8);
  }

  /** What a page may do: its own files, and the one import map that stands in it. */
  static String policy(PageFile page) {
    Matcher map = IMPORT_MAP.matcher(page.text());
    String hash =
        map.find() ? " 'sha256-" + digest(map.group(1).getBytes(StandardCharsets.UTF_8)) + "'" : "";
    return "default-src 'none'; script-src 'self'"
        + hash
        + "; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self';"
        + " frame-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";
  }

  private static Optional<byte[]> read(String path) {
    try (InputStream in = PageFiles.class.getResourceAsStream(path)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String digest(byte[] bytes) {
    try {
      return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("SHA-256 is part of every Java", e);
    }
  }
}
