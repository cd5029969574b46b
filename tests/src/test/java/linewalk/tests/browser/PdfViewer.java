package linewalk.tests.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.TimeUnit;

/** Chromium's PDF viewer with one file open, driven by its debugging protocol: asked where it stands, and clicked. */
final class PdfViewer implements AutoCloseable {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final long PATIENCE_S = 40;
    private static final String VIEWER = "document.querySelector('pdf-viewer')";

    private final Process browser;
    private final HttpClient http = HttpClient.newHttpClient();
    private int port;

    private PdfViewer(Process browser) {
        this.browser = browser;
    }

    /** Empty where there is no Chromium. */
    static Optional<PdfViewer> open(Path pdf, Path profile) throws IOException, InterruptedException {
        Optional<Path> chromium = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser").stream()
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
        if (chromium.isEmpty()) {
            return Optional.empty();
        }
        Process browser = new ProcessBuilder(
                        chromium.get().toString(),
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "--window-size=1200,900",
                        pdf.toUri().toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        PdfViewer viewer = new PdfViewer(browser);
        viewer.port = Integer.parseInt(viewer.until(() -> {
            Path said = profile.resolve("DevToolsActivePort");
            return Files.exists(said) ? Files.readString(said).lines().findFirst() : Optional.empty();
        }));
        viewer.until(() -> Optional.of(viewer.ask(VIEWER + ".loadState_ + ''")).filter(s -> s.equals("success")));
        return Optional.of(viewer);
    }

    @FunctionalInterface
    private interface Question {
        Optional<String> ask() throws Exception;
    }

    private String until(Question question) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (System.nanoTime() < end) {
            try {
                Optional<String> answer = question.ask();
                if (answer.isPresent()) {
                    return answer.get();
                }
            } catch (Exception e) {
                // not there yet
            }
            Thread.sleep(300);
        }
        close();
        throw new AssertionError("the PDF viewer did not come up within " + PATIENCE_S + " s");
    }

    /** From 0. */
    int page() throws Exception {
        return Integer.parseInt(ask("'' + " + VIEWER + ".viewport.getMostVisiblePage()"));
    }

    /** Left, top, width and height of a page and then of the window for pages, in pixels of the browser's window. */
    double[] extents(int page) throws Exception {
        String js = "(() => { const v = " + VIEWER + "; const c = v.shadowRoot.querySelector('#content')"
                + ".getBoundingClientRect(); const r = v.viewport.getPageScreenRect(" + page + ");"
                + " return JSON.stringify([c.x + r.x, c.y + r.y, r.width, r.height, c.x, c.y, c.width, c.height]) })()";
        return JSON.readValue(ask(js), double[].class);
    }

    void click(double x, double y) throws Exception {
        for (String type : List.of("mouseMoved", "mousePressed", "mouseReleased")) {
            send(
                    target("page", ""),
                    "Input.dispatchMouseEvent",
                    JSON.createObjectNode()
                            .put("type", type)
                            .put("x", x)
                            .put("y", y)
                            .put("button", type.equals("mouseMoved") ? "none" : "left")
                            .put("clickCount", type.equals("mouseMoved") ? 0 : 1));
        }
        Thread.sleep(1500); // the viewer scrolls
    }

    private String ask(String js) throws Exception {
        JsonNode answer = send(
                target("iframe", "chrome-extension"),
                "Runtime.evaluate",
                JSON.createObjectNode().put("returnByValue", true).put("expression", js));
        return answer.path("result").path("result").path("value").asText();
    }

    private String target(String type, String url) throws Exception {
        HttpRequest list = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/json/list"))
                .build();
        for (JsonNode t : JSON.readTree(http.send(list, BodyHandlers.ofString()).body())) {
            if (t.get("type").asText().equals(type) && t.get("url").asText().startsWith(url)) {
                return t.get("webSocketDebuggerUrl").asText();
            }
        }
        throw new IOException("no " + type + " " + url);
    }

    private JsonNode send(String target, String method, JsonNode parameters) throws Exception {
        CompletableFuture<String> answer = new CompletableFuture<>();
        StringBuilder text = new StringBuilder();
        WebSocket socket = http.newWebSocketBuilder()
                .buildAsync(URI.create(target), new WebSocket.Listener() {
                    @Override
                    public CompletionStage<?> onText(WebSocket s, CharSequence part, boolean last) {
                        text.append(part);
                        if (last) {
                            answer.complete(text.toString());
                        }
                        s.request(1);
                        return null;
                    }
                })
                .get(10, TimeUnit.SECONDS);
        JsonNode message =
                JSON.createObjectNode().put("id", 1).put("method", method).set("params", parameters);
        socket.sendText(message.toString(), true).get(10, TimeUnit.SECONDS);
        String said = answer.get(10, TimeUnit.SECONDS);
        socket.abort();
        return JSON.readTree(said);
    }

    @Override
    public void close() {
        browser.descendants().forEach(ProcessHandle::destroyForcibly);
        browser.destroyForcibly();
        try {
            browser.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
