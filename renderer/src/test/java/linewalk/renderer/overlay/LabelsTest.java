package linewalk.renderer.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

/** Labels look for white paper near what they speak of. */
class LabelsTest {

    private static final Rectangle2D PAGE = new Rectangle2D.Double(0, 0, 400, 300);
    private static final Rectangle2D THING = new Rectangle2D.Double(190, 140, 20, 20);

    /** Black everywhere but in one rectangle. */
    private static Labels labelsWithRoomOnlyIn(int x, int y, int w, int h) {
        BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(x, y, w, h);
        g.dispose();
        return new Labels(PAGE, InkMap.of(image, 400, 300), new Scale(1));
    }

    @Test
    void goWhereTheOriginalIsWhite() {
        for (int[] room :
                new int[][] {{150, 165, 120, 30}, {150, 105, 120, 30}, {212, 135, 120, 30}, {70, 135, 118, 30}}) {
            Rectangle2D at =
                    labelsWithRoomOnlyIn(room[0], room[1], room[2], room[3]).place(THING, 40, 12, Labels.FAR);
            assertThat(new Rectangle2D.Double(room[0], room[1], room[2], room[3]).contains(at))
                    .isTrue();
        }
    }

    @Test
    void keepOffEachOther() {
        Labels labels = labelsWithRoomOnlyIn(0, 0, 400, 300);
        Rectangle2D[] placed = new Rectangle2D[8];
        for (int i = 0; i < placed.length; i++) {
            placed[i] = labels.place(THING, 40, 12, Labels.FAR);
            for (int k = 0; k < i; k++) {
                assertThat(placed[k].intersects(placed[i])).isFalse();
            }
        }
    }

    @Test
    void doNotStandBetweenTheirOwnBoxAndAnother() {
        Labels labels = labelsWithRoomOnlyIn(0, 0, 400, 300);
        Rectangle2D above = new Rectangle2D.Double(190, 110, 20, 10);
        labels.keepOff(above);
        assertThat(labels.place(THING, 20, 12, Labels.FAR).getMinY()).isGreaterThanOrEqualTo(above.getMaxY() + 5);
    }

    @Test
    void stayWithinReach() {
        Rectangle2D at = labelsWithRoomOnlyIn(0, 0, 400, 80).place(THING, 40, 12, Labels.CLOSE);
        assertThat(at.getMaxY()).isGreaterThanOrEqualTo(THING.getMinY() - Labels.CLOSE);
    }

    @Test
    void stayOnThePage() {
        Rectangle2D corner = new Rectangle2D.Double(390, 290, 8, 8);
        assertThat(PAGE.contains(labelsWithRoomOnlyIn(0, 0, 400, 300).place(corner, 60, 12, Labels.FAR)))
                .isTrue();
    }
}
